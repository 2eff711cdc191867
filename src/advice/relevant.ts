import type { Residual } from '../engine/specialise.js';
import type { DerivedFacts } from '../facts/asked.js';
import type { FactWord, OperationWord, Rule } from '../knowledge/knowledge.js';

/** Facts that some facts were worked out of, all the way down, themselves among them; in the order met. */
export const reaching = (from: Iterable<string>, facts: DerivedFacts): ReadonlySet<string> => {
  const reached = new Set<string>();
  const visit = (id: string): void => {
    if (reached.has(id)) return;
    reached.add(id);
    facts.read(id);
    for (const input of facts.inputsOf(id)) visit(input);
  };
  for (const id of from) visit(id);
  return reached;
};

/** Every fact that these rules still look at. */
export const lookedAt = (rules: readonly Residual<Rule>[]): ReadonlySet<string> => new Set(rules.flatMap((residual) => residual.table?.buckets.map((buckets) => buckets.fact) ?? []));

/** Whether a proposal of this operation can tell a fact: a parameter only where the operation has it. */
export const canTell = (word: FactWord, operation: OperationWord): boolean =>
  word.given?.startsWith('operation.') !== true || operation.parameters.includes(word.given.slice('operation.'.length));

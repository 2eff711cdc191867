import { Engine, Fact } from 'json-rules-engine';
import { testsOf } from '../../engine/condition.js';
import { engineRules, limitFact } from '../../engine/engineRules.js';
import { ruleCondition } from '../../engine/ruleCondition.js';
import type { Contender, FiredOn } from './contender.js';

/** A condition as the engine gives it back. */
interface Judged {
  readonly fact?: string;
  readonly result?: boolean;
  readonly all?: readonly Judged[];
  readonly any?: readonly Judged[];
}

const groundsIn = ({ fact, all, any }: Judged): readonly string[] => {
  if (all !== undefined) return all.flatMap(groundsIn);
  if (any === undefined) return [fact!];
  const first = any.find((part) => part.result === true);
  return first === undefined ? [] : groundsIn(first);
};

/** json-rules-engine as an app would use the rules that we export for it: an engine for each operation, one pass, what is not known left out. It then takes that for what does not fit. */
export const engineOnePass: Contender = () => {
  const engines = new Map<string, { readonly engine: Engine; readonly needed: readonly string[] }>();
  return ({ knowledge, operation }) => {
    const { engine, needed } = engines.get(operation) ?? {
      engine: new Engine(engineRules(knowledge, operation).map(({ name, conditions }) => ({ name: name!, conditions, event: { type: 'holds' } })), { allowUndefinedFacts: true }),
      needed: [...new Set(Object.values(knowledge.rules).filter(({ operations }) => operations === 'all' || operations.includes(operation)).flatMap((rule) => testsOf(ruleCondition(rule))).flatMap((test) => [test.fact, limitFact(test.limit) ?? test.fact]))],
    };
    engines.set(operation, { engine, needed });
    return async ({ whole }) => {
      const facts: Record<string, Fact> = {};
      for (const id of needed) if (whole[id]?.length === 1) facts[id] = new Fact(id, whole[id][0], { cache: false });
      const { results } = await engine.run(facts);
      return results.map(({ name, conditions }): FiredOn => ({ rule: name, fires: 'certainly', facts: groundsIn((conditions as { readonly all: readonly Judged[] }).all[0]!.all![0]!) }));
    };
  };
};

import { severity } from '../../engine/verdict.js';
import type { Fault } from '../../knowledge/check.js';
import type { Knowledge, Rule, WrittenCondition } from '../../knowledge/knowledge.js';

type Path = readonly (string | number)[];
interface Placed {
  readonly fact: string;
  readonly operand: unknown;
  readonly at: Path;
}

const factsIn = (conditions: readonly WrittenCondition[], at: Path): readonly Placed[] =>
  conditions.flatMap((condition, i) => Object.entries(condition).flatMap(([fact, operand]): readonly Placed[] => (fact === 'any' || fact === 'all' ? factsIn(operand as readonly WrittenCondition[], [...at, i, fact]) : [{ fact, operand, at: [...at, i, fact] }])));

/** Sentences by their ends; a full stop within a figure or before a small letter ends none. */
const sentences = (text: string): number => text.split(/(?<=[.!?])\s+(?=[\p{Lu}{])/u).length;

/** What is wrong with how rules are written, though they could be read: species by name, ranges that run backwards, reasons that ramble, rules that cover what is worse. */
export const vetRuleHouse = (knowledge: Knowledge): readonly Fault[] =>
  Object.values(knowledge.rules).flatMap((rule: Rule): readonly Fault[] => {
    const fault = (at: Path, code: Fault['code'], message: string, help: string): Fault => ({ code, file: `rules/${rule.id}.yaml`, at, path: at.join('.'), message, help });
    const faults: Fault[] = [];
    for (const { fact, operand, at } of [...factsIn(rule.when, ['when']), ...rule.unless.flatMap((reason, i) => factsIn(reason.when, ['unless', i, 'when']))]) {
      if (fact === 'tree.species') faults.push(fault(at, 'not-allowed', 'the rule names a species', 'let it look at the traits that matter; give the species the trait'));
      const between = (operand as { readonly between?: readonly [number, number] } | null)?.between;
      if (between !== undefined && between[0] > between[1]) faults.push(fault([...at, 'between'], 'not-allowed', `\`between: ${between.join(', ')}\` runs backwards`, 'least first, then most'));
    }
    if (sentences(rule.because) > 2) faults.push(fault(['because'], 'too-large', `\`because\` has ${sentences(rule.because)} sentences`, 'two at most: the mechanism, then what it means for this tree'));
    rule.covers.forEach((id, i) => {
      const other = knowledge.rules[id]!;
      if (id === rule.id) faults.push(fault(['covers', i], 'circle', 'the rule covers itself', 'leave it out'));
      else if (severity(other.verdict) > severity(rule.verdict)) faults.push(fault(['covers', i], 'not-allowed', `\`${id}\` is worse than the rule that covers it`, 'a rule covers only what is as bad or milder'));
    });
    rule.examples.forEach((example, i) => {
      const twin = rule.examples.findIndex((other) => JSON.stringify([other.operation, Object.entries(other.given).sort()]) === JSON.stringify([example.operation, Object.entries(example.given).sort()]));
      if (twin < i) faults.push(fault(['examples', i], 'duplicate', `example ${i + 1} gives what example ${twin + 1} gives`, 'keep one'));
    });
    return faults;
  });

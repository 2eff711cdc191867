import { type Test, testsOf } from '../engine/condition.js';
import { ruleCondition } from '../engine/ruleCondition.js';
import type { Knowledge, Rule, RuleExample } from '../knowledge/knowledge.js';
import { exampleOperation, exampleTraits } from './runExample.js';

type Side = 'below' | 'at' | 'above';

/** A limit that a rule holds a number against, and on which sides of it (of those there can be) no example stands. */
export interface Threshold {
  readonly test: Test;
  readonly text: string;
  readonly missing: readonly Side[];
}

const rounded = (value: number): number => Math.round(value * 1e9) / 1e9;

/** What a test's limit comes to in an example: a trait counts as the example's species has it. */
export const limitIn = (test: Test, rule: Rule, example: RuleExample, knowledge: Knowledge): number | undefined => {
  const { limit } = test;
  if ('is' in limit) return typeof limit.is === 'number' ? limit.is : undefined;
  const figure = 'trait' in limit ? exampleTraits(example, knowledge)[limit.trait]?.is : knowledge.operations[exampleOperation(rule, example, knowledge)]?.daysNeeded?.days;
  return typeof figure === 'number' ? rounded(figure * limit.times + limit.plus) : undefined;
};

const limitText = (test: Test): string => ('is' in test.limit ? String(test.limit.is) : 'trait' in test.limit ? `its trait ${test.limit.trait}` : 'its operation’s daysNeeded');

const sides: readonly (readonly [number, Side])[] = [[-1, 'below'], [0, 'at'], [1, 'above']];

/** Every threshold of a rule, each once, with the sides that its examples leave out; limits on traits of the species only where asked for. */
export const thresholdsOf = (rule: Rule, knowledge: Knowledge, traitsToo = false): readonly Threshold[] => {
  const found = new Map<string, Threshold>();
  for (const test of testsOf(ruleCondition(rule))) {
    if (!/^(?:greater|less)Than/.test(test.operator) || (!traitsToo && test.fact.startsWith('species.'))) continue;
    const key = `${test.fact} ${JSON.stringify(test.limit)}`;
    if (found.has(key)) continue;
    const seen = new Set<number>();
    for (const example of rule.examples) {
      const value = example.given[test.fact] ?? (test.fact.startsWith('species.') ? exampleTraits(example, knowledge)[test.fact.slice('species.'.length)]?.is : undefined);
      const limit = limitIn(test, rule, example, knowledge);
      if (typeof value === 'number' && limit !== undefined) seen.add(Math.sign(Math.round((value - limit) * 1e9)));
    }
    const bounds = knowledge.facts[test.fact]?.bounds;
    const edge = 'is' in test.limit ? (test.limit.is as number) : undefined;
    const cannotBe = (side: number): boolean => edge !== undefined && ((side === -1 && edge <= (bounds?.[0] ?? -Infinity)) || (side === 1 && edge >= (bounds?.[1] ?? Infinity)));
    found.set(key, { test, text: limitText(test), missing: sides.filter(([side]) => !seen.has(side) && !cannotBe(side)).map(([, word]) => word) });
  }
  return [...found.values()];
};

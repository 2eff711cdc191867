import type { FactWord, Value } from '../knowledge/knowledge.js';
import type { FactValue } from '../facts/factValue.js';
import { askEngine, type Answer } from './askEngine.js';
import { type Buckets, bucketsOf } from './buckets.js';
import { type Condition, testsOf } from './condition.js';

/** A residual rule as a table: one answer of the engine for each combination of classes of its facts, filled when first needed. */
export interface Table {
  readonly condition: Condition;
  readonly buckets: readonly Buckets[];
  readonly cells: Map<string, Answer>;
}

export type ReadFact = (id: string) => FactValue;

export const tableOf = (condition: Condition, facts: Readonly<Record<string, FactWord>>): Table => {
  const tests = testsOf(condition);
  const ids = [...new Set(tests.map((test) => test.fact))];
  return { condition, buckets: ids.map((id) => bucketsOf(id, facts[id], tests.filter((test) => test.fact === id))), cells: new Map() };
};

const classOf = (buckets: Buckets, fact: FactValue, strict: boolean): number => {
  if (fact.value === undefined || (strict && fact.state === 'estimated')) return buckets.among(fact);
  return buckets.of(fact.value);
};

/** The cell that the facts fall into. Strict: an estimate counts only by the bounds that are sure. */
export const cellKey = (table: Table, read: ReadFact, strict = false): string => {
  let key = '';
  for (const buckets of table.buckets) key += `${classOf(buckets, read(buckets.fact), strict)},`;
  return key;
};

/** Asks the engine for one cell, each class by the value that stands for it. */
export const fillCell = async (table: Table, key: string): Promise<Answer> => {
  const masks = key.split(',');
  const possible = new Map<string, readonly Value[]>();
  table.buckets.forEach((buckets, i) => possible.set(buckets.fact, buckets.stands.filter((_, bucket) => (Number(masks[i]) & (1 << bucket)) !== 0)));
  return await askEngine(table.condition, possible);
};

import type { FactWord, Value } from '../knowledge/knowledge.js';
import type { FactValue } from '../facts/factValue.js';
import { askEngine, type Answer } from './askEngine.js';
import { type Buckets, bucketsOf, tooMany } from './buckets.js';
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
  const buckets = ids.map((id) => bucketsOf(id, facts[id], tests.filter((test) => test.fact === id)));
  const wide = buckets.find(tooMany);
  if (wide !== undefined) throw new RangeError(`a rule cuts \`${wide.fact}\` into ${wide.count} classes: at most 30`);
  return { condition, buckets, cells: new Map() };
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

/** A fact and the ways in which some tables cut it. */
export interface Cuts {
  readonly fact: string;
  readonly ways: readonly Buckets[];
}

/** The ways in which some tables cut some of their facts, each once. */
export const cutsOf = (tables: readonly Table[], facts: ReadonlySet<string>): readonly Cuts[] => {
  const cuts = new Map<string, Map<string, Buckets>>();
  for (const buckets of tables.flatMap((table) => table.buckets)) {
    if (!facts.has(buckets.fact)) continue;
    const ways = cuts.get(buckets.fact) ?? new Map<string, Buckets>();
    cuts.set(buckets.fact, ways.set(JSON.stringify(buckets.stands), buckets));
  }
  return [...cuts].map(([fact, ways]) => ({ fact, ways: [...ways.values()] }));
};

/** All that tables with these cuts can tell of the facts, estimates by value and by their sure bounds: where the other facts are the same, the same key gets the same answer from each of them. */
export const cutKey = (cuts: readonly Cuts[], read: ReadFact): string => {
  let key = '';
  for (const { fact, ways } of cuts) {
    const value = read(fact);
    for (const buckets of ways) key += value.state === 'estimated' ? `${classOf(buckets, value, false)}/${classOf(buckets, value, true)},` : `${classOf(buckets, value, false)},`;
  }
  return key;
};

/** Asks the engine for one cell, each class by the value that stands for it. */
export const fillCell = async (table: Table, key: string): Promise<Answer> => {
  const masks = key.split(',');
  const possible = new Map<string, readonly Value[]>();
  table.buckets.forEach((buckets, i) => possible.set(buckets.fact, buckets.stands.filter((_, bucket) => (Number(masks[i]) & (1 << bucket)) !== 0)));
  return await askEngine(table.condition, possible);
};

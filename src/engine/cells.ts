import type { FactWord, Value } from '../knowledge/knowledge.js';
import type { FactValue } from '../facts/factValue.js';
import { type Answer, askEngine } from './askEngine.js';
import { type Buckets, bucketsOf, tooMany } from './buckets.js';
import { type Condition, testsOf } from './condition.js';

/** A residual rule as a table: one answer of the engine for each combination of classes of its facts, filled when first needed. */
export interface Table {
  readonly condition: Condition;
  readonly buckets: readonly Buckets[];
  readonly cells: Map<CellKey, Answer>;
  /** The cells that are being filled. */
  readonly filling: Map<CellKey, Promise<void>>;
  /** Whether the classes of all its facts fit into one whole number as bits; as they nearly always do. */
  readonly packed: boolean;
}

/** The classes that each fact falls into, as bits, one fact after the other. */
export type CellKey = number | string;

/** A cell of a table. */
export interface Cell {
  readonly table: Table;
  readonly key: CellKey;
}

/** As many bits as a whole number has that is kept without a box. */
const mostPacked = 30;

export type ReadFact = (id: string) => FactValue;

export const tableOf = (condition: Condition, facts: Readonly<Record<string, FactWord>>): Table => {
  const tests = testsOf(condition);
  const ids = [...new Set(tests.map((test) => test.fact))];
  const buckets = ids.map((id) => bucketsOf(id, facts[id], tests.filter((test) => test.fact === id)));
  const wide = buckets.find(tooMany);
  if (wide !== undefined) throw new RangeError(`a rule cuts \`${wide.fact}\` into ${wide.count} classes: at most 30`);
  return { condition, buckets, cells: new Map(), filling: new Map(), packed: buckets.reduce((sum, { count }) => sum + count, 0) <= mostPacked };
};

const classOf = (buckets: Buckets, fact: FactValue, strict: boolean): number => {
  if (fact.value === undefined || (strict && fact.state === 'estimated')) return buckets.among(fact);
  return buckets.of(fact.value);
};

/** The key of the cell in which each fact falls into the classes that are told, as bits. */
export const keyOf = (table: Table, classesOf: (buckets: Buckets, place: number) => number): CellKey => {
  const { buckets, packed } = table;
  if (packed) {
    let key = 0;
    for (let i = 0; i < buckets.length; i++) key = (key << buckets[i]!.count) | classesOf(buckets[i]!, i);
    return key;
  }
  return buckets.map(classesOf).join();
};

const classesIn = ({ buckets, packed }: Table, key: CellKey): readonly number[] => {
  if (!packed) return (key as string).split(',').map(Number);
  let rest = key as number;
  return buckets.map((_, i) => {
    const { count } = buckets[buckets.length - 1 - i]!;
    const classes = rest & ((1 << count) - 1);
    rest >>>= count;
    return classes;
  }).reverse();
};

/** The cell that the facts fall into. Strict: an estimate counts only by the bounds that are sure. */
export const cellKey = (table: Table, read: ReadFact, strict = false): CellKey => keyOf(table, (buckets) => classOf(buckets, read(buckets.fact), strict));

/** A fact and the ways in which some tables cut it. */
export interface Cuts {
  readonly fact: string;
  readonly ways: readonly Buckets[];
}

/** The ways in which some tables cut some of their facts, each once: in one way that is as fine as all of them, where it has classes for that. */
export const cutsOf = (tables: readonly Table[], facts: Readonly<Record<string, FactWord>>, some: ReadonlySet<string>): readonly Cuts[] => {
  const ways = new Map<string, Map<string, Buckets>>();
  for (const buckets of tables.flatMap((table) => table.buckets)) {
    if (some.has(buckets.fact)) ways.set(buckets.fact, (ways.get(buckets.fact) ?? new Map<string, Buckets>()).set(JSON.stringify(buckets.stands), buckets));
  }
  const tests = tables.flatMap(({ condition }) => testsOf(condition));
  return [...ways].map(([fact, each]) => {
    /* The classes of a list double with each member that a rule names. */
    const finest = facts[fact]?.type === 'list' ? undefined : bucketsOf(fact, facts[fact], tests.filter((test) => test.fact === fact));
    return { fact, ways: finest === undefined || tooMany(finest) ? [...each.values()] : [finest] };
  });
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

/** Asks the engine for some cells in one run, each class by the value that stands for it. */
export const answersOf = async (cells: readonly Cell[]): Promise<readonly Answer[]> =>
  await askEngine(cells.map(({ table, key }) => {
    const classes = classesIn(table, key);
    return { condition: table.condition, possible: new Map(table.buckets.map((buckets, i): [string, readonly Value[]] => [buckets.fact, buckets.stands.filter((_, bucket) => (classes[i]! & (1 << bucket)) !== 0)])) };
  }));

const fill = async (cells: readonly Cell[]): Promise<void> => {
  if (cells.length === 0) return;
  try {
    const answers = await answersOf(cells);
    cells.forEach(({ table, key }, i) => table.cells.set(key, answers[i]!));
  } finally {
    for (const { table, key } of cells) table.filling.delete(key);
  }
};

/** Fills cells that are empty yet, each once: who asks for one that is being filled waits for the same answer. */
export const fillCells = async (cells: readonly Cell[]): Promise<void> => {
  const fresh: Cell[] = [];
  const filled = Promise.resolve(fresh).then(fill);
  await Promise.all(cells.map(async (cell) => {
    const filling = cell.table.filling.get(cell.key);
    if (filling === undefined) fresh.push(cell);
    cell.table.filling.set(cell.key, filling ?? filled);
    await (filling ?? filled);
  }));
};

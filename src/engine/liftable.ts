import type { FactWord } from '../knowledge/knowledge.js';
import { cellKey, fillCells, type ReadFact, type Table, tableOf } from './cells.js';
import { type Condition, testsOf } from './condition.js';
import type { Residual } from './specialise.js';

/** A condition in which what is not known may lift the rule after all. */
const strict = (condition: Condition): Condition => {
  switch (condition.kind) {
    case 'test': {
      const { lenient: _, ...test } = condition;
      return test;
    }
    case 'all':
    case 'any':
      return { kind: condition.kind, of: condition.of.map(strict) };
    case 'not':
    case 'constant':
      return condition;
  }
};

const tables = new WeakMap<Table, Table>();

/** The facts that are not known and that could lift a rule which fires for certain only because they are taken not to; none where it fires whatever they are. */
export const liftable = async (residual: Residual, read: ReadFact, facts: Readonly<Record<string, FactWord>>): Promise<readonly string[]> => {
  const { table } = residual;
  if (table === undefined) return [];
  const open = [...new Set(testsOf(table.condition).filter((test) => test.lenient === true && read(test.fact).value === undefined).map((test) => test.fact))];
  if (open.length === 0) return [];
  const stern = tables.get(table) ?? tableOf(strict(table.condition), facts);
  tables.set(table, stern);
  const key = cellKey(stern, read);
  if (!stern.cells.has(key)) await fillCells([{ table: stern, key }]);
  return stern.cells.get(key)!.certainly ? [] : open;
};

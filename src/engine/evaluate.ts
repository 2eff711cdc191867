import type { Answer } from './askEngine.js';
import { type CellKey, cellKey, fillCells, type ReadFact, type Table } from './cells.js';
import type { Conditional } from './ruleCondition.js';
import type { Residual } from './specialise.js';

/** A rule that fires, or that an unknown fact could still make fire. */
export interface Fired<Whole extends Conditional = Conditional> {
  readonly residual: Residual<Whole>;
  readonly fires: 'certainly' | 'possibly';
  /** Whether it still fires for certain where estimates count only by the bounds that are sure. */
  readonly firm: boolean;
  readonly answer?: Answer;
}

/** Cells that are empty yet, each once. */
type Empty = Map<Table, Set<CellKey>>;

/** What the tables say of these facts; the cells that are empty yet are noted instead. */
const lookedUp = <Whole extends Conditional>(residuals: readonly Residual<Whole>[], read: ReadFact, empty: Empty): readonly Fired<Whole>[] => {
  const fired: Fired<Whole>[] = [];
  const answerOf = (table: Table, key: CellKey): Answer | undefined => {
    const answer = table.cells.get(key);
    if (answer === undefined) empty.set(table, (empty.get(table) ?? new Set()).add(key));
    return answer;
  };
  for (const residual of residuals) {
    const { table } = residual;
    if (table === undefined) {
      fired.push({ residual, fires: 'certainly', firm: true });
      continue;
    }
    const key = cellKey(table, read);
    const answer = answerOf(table, key);
    if (answer?.possibly !== true) continue;
    if (!answer.certainly) {
      fired.push({ residual, fires: 'possibly', firm: false, answer });
      continue;
    }
    const strictly = cellKey(table, read, true);
    fired.push({ residual, fires: 'certainly', firm: strictly === key || answerOf(table, strictly)?.certainly === true, answer });
  }
  return fired;
};

/** Which rules fire on each of some sets of facts: looked up in their tables; what is empty yet is asked of json-rules-engine, all that is known to be needed in one run. */
export const evaluateEach = async <Whole extends Conditional>(residuals: readonly Residual<Whole>[], reads: readonly ReadFact[]): Promise<readonly (readonly Fired<Whole>[])[]> => {
  for (;;) {
    const empty: Empty = new Map();
    const fired = reads.map((read) => lookedUp(residuals, read, empty));
    if (empty.size === 0) return fired;
    await fillCells([...empty].flatMap(([table, keys]) => [...keys].map((key) => ({ table, key }))));
  }
};

/** Which rules fire on these facts. */
export const evaluate = async <Whole extends Conditional>(residuals: readonly Residual<Whole>[], read: ReadFact): Promise<readonly Fired<Whole>[]> => (await evaluateEach(residuals, [read]))[0]!;

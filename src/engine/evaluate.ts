import type { Answer } from './askEngine.js';
import { cellKey, fillCell, type ReadFact, type Table } from './cells.js';
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

const answerOf = async (table: Table, key: string): Promise<Answer> => {
  const kept = table.cells.get(key);
  if (kept !== undefined) return kept;
  const answer = await fillCell(table, key);
  table.cells.set(key, answer);
  return answer;
};

/** Which rules fire on these facts: looked up in their tables; a cell that is empty yet is asked of json-rules-engine. */
export const evaluate = async <Whole extends Conditional>(residuals: readonly Residual<Whole>[], read: ReadFact): Promise<readonly Fired<Whole>[]> => {
  const fired: Fired<Whole>[] = [];
  for (const residual of residuals) {
    const { table } = residual;
    if (table === undefined) {
      fired.push({ residual, fires: 'certainly', firm: true });
      continue;
    }
    const key = cellKey(table, read);
    const answer = table.cells.get(key) ?? (await answerOf(table, key));
    if (!answer.possibly) continue;
    if (!answer.certainly) {
      fired.push({ residual, fires: 'possibly', firm: false, answer });
      continue;
    }
    const strictly = cellKey(table, read, true);
    const firm = strictly === key || (table.cells.get(strictly) ?? (await answerOf(table, strictly))).certainly;
    fired.push({ residual, fires: 'certainly', firm, answer });
  }
  return fired;
};

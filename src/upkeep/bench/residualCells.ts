import { evaluate } from '../../engine/evaluate.js';
import { groundsOf } from '../../engine/explain.js';
import type { Contender } from './contender.js';

/** Ours: residual rules and their cells. It also tells what rests on an estimate alone, which no other is asked for. */
export const residualCells: Contender = () => ({ residuals }) => async ({ read }) =>
  (await evaluate(residuals, read)).map((fired) => ({ rule: fired.residual.rule.id, fires: fired.fires, facts: groundsOf(fired).map(({ fact }) => fact) }));

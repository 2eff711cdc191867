import type { Assessment } from '../contract/types.generated.js';
import { evaluate } from '../engine/evaluate.js';
import type { Residual } from '../engine/specialise.js';
import type { Read } from '../facts/asked.js';
import type { Caution, Knowledge } from '../knowledge/knowledge.js';

/** What is said for safety whatever the verdict; also where a fact that is not known could call for it. */
export const cautionsOf = async (residuals: readonly Residual<Caution>[], read: Read, knowledge: Knowledge): Promise<Assessment['cautions']> =>
  (await evaluate(residuals, read)).map(({ residual }) => ({ id: residual.rule.id, text: knowledge.wording[`caution.${residual.rule.id}`] ?? residual.rule.id }));

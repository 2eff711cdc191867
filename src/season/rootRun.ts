import type { SeasonTraits } from './seasonTraits.js';
import { daysInYear } from './yearDay.js';

/** Season days between which roots can grow; `always` where they never stop; undefined where they never start. */
export type RootRun = { readonly start: number; readonly end: number } | 'always' | undefined;

/** Mean air below which roots stand still, C: half the new roots of temperate trees stop near 6 C and work well from 9 C; those from warm countries stop far earlier. */
const limitC = (traits: SeasonTraits): number => (traits.model === 'tropical' || traits.model === 'dry-deciduous' ? 14 : 7);

/**
 * When the roots of a tree in a pot can grow, by the smoothed mean of the air: a pot follows the air, not deep soil.
 *
 * Use it through `seasonOn`. No better than ten days either way.
 * @param meanC 365 smoothed means from midwinter on, C
 * @param traits the species' season traits; only the model is read
 * Source: Alvarez-Uria & Korner 2007, Functional Ecology 21 (conclusions as quoted second-hand): under 3 % of new roots below 6 C, 85 % above 9 C. 14 C for the tropics is practice.
 */
export const rootRun = (meanC: readonly number[], traits: SeasonTraits): RootRun => {
  const limit = limitC(traits);
  const warmest = meanC.indexOf(Math.max(...meanC));
  if ((meanC[warmest] ?? 0) < limit) return undefined;
  if (Math.min(...meanC) >= limit) return 'always';
  let start = warmest;
  while ((meanC[(start - 1 + daysInYear) % daysInYear] ?? 0) >= limit) start -= 1;
  let end = warmest;
  while ((meanC[end % daysInYear] ?? 0) >= limit) end += 1;
  return { start, end };
};

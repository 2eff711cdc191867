import { dayToDaySpread } from './dayToDaySpread.js';
import { expectedExcess } from './expectedExcess.js';

/** Base of the forcing sum, C. */
export const forcingBaseC = 5;

/** Weight of a day in spring by its length: 0 up to 10 h, 1 at 14 h. */
export const daylengthWeight = (daylengthH: number): number => (Math.max(0, daylengthH - 10) / 4) ** 2;

/**
 * What each day of a year adds towards bud swell and leaf-out, in spring units.
 *
 * A spring unit is one degree-day above 5 C on a day of 14 h, averaged over the scatter of single days. Warm winter days count for
 * little, so that one threshold serves mild and cold places alike; plain degree-days from 1 January do no better than the average date.
 * @param smoothMeanC daily means in the order wanted, C
 * @param daylengthH daylengths of the same days, hours
 * @returns spring units of each day
 * Source: form fitted on leaf-out of 63 PhenoCam sites (Richardson et al. 2018, PhenoCam v1); refitted in tests/outside/season.
 */
export const springForcing = (smoothMeanC: readonly number[], daylengthH: readonly number[]): readonly number[] => {
  const spread = dayToDaySpread(smoothMeanC);
  return smoothMeanC.map((mean, i) =>
    expectedExcess(mean, forcingBaseC, spread[i] ?? 0) * daylengthWeight(daylengthH[i] ?? 0));
};

/** The first day on which the running sum of `perDay` reaches `threshold`; undefined where it never does. */
export const dayReaching = (perDay: readonly number[], threshold: number): number | undefined => {
  let sum = 0;
  for (let i = 0; i < perDay.length; i += 1) {
    sum += perDay[i] ?? 0;
    if (sum >= threshold) return i;
  }
  return undefined;
};

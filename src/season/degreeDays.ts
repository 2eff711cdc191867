import { dayToDaySpread } from './dayToDaySpread.js';
import { expectedExcess } from './expectedExcess.js';

/** Degree-days of one day by the average method: max(0, (max + min) / 2 - base). */
export const averageDegreeDays = (minC: number, maxC: number, baseC: number): number =>
  Math.max(0, (minC + maxC) / 2 - baseC);

/** Degree-days of one day by the modified average: each of minimum and maximum is raised to the base first (used in Ohio's bloom calendars). */
export const modifiedAverageDegreeDays = (minC: number, maxC: number, baseC: number): number =>
  (Math.max(minC, baseC) + Math.max(maxC, baseC)) / 2 - baseC;

/**
 * Degree-days of one day under a single sine through minimum and maximum.
 *
 * Source: Baskerville & Emin 1969, Ecology 50:514 (formula from memory, checked against printed worked examples).
 */
export const sineDegreeDays = (minC: number, maxC: number, baseC: number): number => {
  const mean = (minC + maxC) / 2;
  const half = (maxC - minC) / 2;
  if (maxC <= baseC) return 0;
  if (minC >= baseC) return mean - baseC;
  const crossing = Math.asin((baseC - mean) / half);
  return ((mean - baseC) * (Math.PI / 2 - crossing) + half * Math.cos(crossing)) / Math.PI;
};

/** Degree-days of one day under a single triangle: the part of it above the base. Source: as printed on the TrenchR reference pages. */
export const triangleDegreeDays = (minC: number, maxC: number, baseC: number): number => {
  if (maxC <= baseC) return 0;
  if (minC >= baseC) return (minC + maxC) / 2 - baseC;
  return (maxC - baseC) ** 2 / (2 * (maxC - minC));
};

/**
 * Degree-days of each day of a normal year, by the average method with day-to-day spread.
 *
 * Use it for sums from normals; a threshold taken from a table made by another method must not be compared with it.
 * @param smoothMeanC 365 smooth daily means, C
 * @param baseC base, C
 */
export const degreeDaysOfYear = (smoothMeanC: readonly number[], baseC: number): readonly number[] => {
  const spread = dayToDaySpread(smoothMeanC);
  return smoothMeanC.map((mean, i) => expectedExcess(mean, baseC, spread[i] ?? 0));
};

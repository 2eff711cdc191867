import type { Day } from './day.js';
import { daysInYear } from './yearDay.js';

/** The whole season to come counts from this many days before it begins (practice: work done six weeks before bud swell lives on that season). */
const seasonAheadDays = 42;

/** Days left in a run of the year that begins at `start` and ends at `end` (season days): 0 outside it, and the whole run from six weeks before it. */
export const daysLeftIn = (day: Day, runs: readonly { readonly start: Day; readonly end: Day }[]): number => {
  for (const { start, end } of runs) if (day >= start - seasonAheadDays && day < end) return Math.min(daysInYear, end - Math.max(day, start));
  return 0;
};

import type { Day } from './day.js';
import { dayOfSeason } from './growingYear.js';
import { daysInYear } from './yearDay.js';

/** The whole season to come counts from this many days before it begins (practice: work done six weeks before bud swell lives on that season). */
const seasonAheadDays = 42;

/** Days left in a run of the year that begins at `start` and ends at `end` (season days): 0 outside it, and the whole run from six weeks before it. */
export const daysLeftIn = (
  day: Day, year: number, south: boolean, runOf: (year: number) => { readonly start: number; readonly end: number } | undefined,
): number => {
  for (const one of [year - 1, year, year + 1]) {
    const run = runOf(one);
    if (run === undefined) continue;
    const start = dayOfSeason(one, run.start, south);
    const end = dayOfSeason(one, run.end, south);
    if (day >= start - seasonAheadDays && day < end) return Math.min(daysInYear, end - Math.max(day, start));
  }
  return 0;
};

import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { dayOfSeason } from './growingYear.js';
import { daysInYear } from './yearDay.js';

interface DayRun { readonly start: Day; readonly end: Day }

/** The turning days of a growing year and those beside it, as day numbers. */
export interface YearFrame {
  /** Runs of growth of three years. */
  readonly growth: readonly DayRun[];
  /** Runs in which roots grow, of three years. */
  readonly roots: readonly DayRun[];
  /** First days of growth of this year and the next two. */
  readonly starts: readonly Day[];
  /** Leaf-out of four years, the latest first. */
  readonly leafOuts: readonly Day[];
  /** Last and first frosts of three years. */
  readonly lastFrosts: readonly Day[];
  readonly firstFrosts: readonly Day[];
}

const kept = new WeakMap<Calendar, Map<number, YearFrame>>();

/** The turning days around a growing year, worked out once for each calendar and year: hundreds of days are asked of it. */
export const yearFrame = (calendar: Calendar, year: number): YearFrame => {
  const years = kept.get(calendar) ?? new Map<number, YearFrame>();
  kept.set(calendar, years);
  const before = years.get(year);
  if (before !== undefined) return before;
  const place = calendar.climateYear;
  const south = place?.south ?? false;
  const pointsOf = (one: number): Calendar['ordinary'] => calendar.moved[one] ?? calendar.ordinary;
  const around = [year - 1, year, year + 1];
  const growth = around.flatMap((one) => {
    const points = pointsOf(one);
    return points?.start === undefined || points.end === undefined ? [] : [{ start: dayOfSeason(one, points.start, south), end: dayOfSeason(one, points.end, south) }];
  });
  const run = calendar.rootRun;
  const roots = run === undefined || run === 'always' ? [] : around.map((one) => ({ start: dayOfSeason(one, run.start, south), end: dayOfSeason(one, run.end, south) }));
  const placed = (which: readonly number[], pick: (points: NonNullable<Calendar['ordinary']>) => number | undefined): readonly Day[] => which.flatMap((one) => {
    const points = pointsOf(one);
    const at = points === undefined ? undefined : pick(points);
    return at === undefined ? [] : [dayOfSeason(one, at, south)];
  });
  const frost = typeof place?.frost === 'object' ? place.frost : undefined;
  // A first frost after midwinter belongs to the growing year before.
  const firstIn = frost === undefined ? 0 : frost.first > frost.last ? frost.first : frost.first + daysInYear;
  const frame = {
    growth,
    roots,
    starts: placed([year, year + 1, year + 2], (points) => points.start),
    leafOuts: placed([year + 1, year, year - 1, year - 2], (points) => points.leafOut),
    lastFrosts: frost === undefined ? [] : around.map((one) => dayOfSeason(one, frost.last, south)),
    firstFrosts: frost === undefined ? [] : around.map((one) => dayOfSeason(one, firstIn, south)),
  };
  years.set(year, frame);
  return frame;
};

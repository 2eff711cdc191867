import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { dayOfSeason } from './growingYear.js';
import type { Phase } from './seasonTraits.js';

/** A phase and the day on which it begins. */
export interface PlacedStep { readonly year: number; readonly phase: Phase; readonly from: Day; readonly plusMinusDays: number }

const kept = new WeakMap<Calendar, Map<number, readonly PlacedStep[]>>();

/**
 * The phases of a growing year and the two beside it, in order, as day numbers; worked out once for each calendar and year.
 *
 * @param calendar as `seasonCalendar` gave it
 * @param year growing year
 */
export const placedSteps = (calendar: Calendar, year: number): readonly PlacedStep[] => {
  const years = kept.get(calendar) ?? new Map<number, readonly PlacedStep[]>();
  kept.set(calendar, years);
  const before = years.get(year);
  if (before !== undefined) return before;
  const south = calendar.climateYear?.south ?? false;
  const placed = [year - 1, year, year + 1].flatMap((one) =>
    (calendar.moved[one]?.steps ?? calendar.ordinary?.steps ?? []).map((step) =>
      ({ year: one, phase: step.phase, from: dayOfSeason(one, step.from, south), plusMinusDays: step.plusMinusDays })));
  years.set(year, placed);
  return placed;
};

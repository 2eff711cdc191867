import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { dayOfSeason, inGrowingYear } from './growingYear.js';

/**
 * Days of growth between two days.
 *
 * Use it for how much a tree has made good since some work: it heals while it grows, not while it rests.
 * @param calendar as `seasonCalendar` gave it
 * @param from the day of the work
 * @param to a later day
 * @returns days, at most `to - from`; undefined where the model has no reach
 */
export const grownDays = (calendar: Calendar, from: Day, to: Day): number | undefined => {
  const { ordinary } = calendar;
  if (ordinary === undefined || ordinary.steps.length === 0) return undefined;
  if (ordinary.always) return to - from;
  const south = calendar.climateYear?.south ?? false;
  let days = 0;
  /* A year's growth may reach into the years beside it; no day counts twice. */
  let counted = from;
  for (let year = inGrowingYear(from, south).year - 1; year <= inGrowingYear(to, south).year + 1; year++) {
    const { start, end } = calendar.moved[year] ?? ordinary;
    if (start === undefined || end === undefined) continue;
    const [first, last] = [Math.max(counted, dayOfSeason(year, start, south)), Math.min(to, dayOfSeason(year, end, south))];
    if (last <= first) continue;
    days += last - first;
    counted = last;
  }
  return days;
};

import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { dayOfSeason } from './growingYear.js';
import { estimate, known } from './range.js';
import type { Range } from './seasonShape.js';
import { daysInYear } from './yearDay.js';

/** Days to the end and to the beginning of frosts; missing where it is not known, or where frost never ends. */
export const frostOn = (
  calendar: Calendar, day: Day, year: number, sure: boolean,
): { readonly daysToLastFrost?: Range | 'none'; readonly daysToFirstFrost?: Range | 'none' } => {
  const place = calendar.climateYear;
  if (place === undefined || place.frost === 'all-year') return {};
  if (place.frost === 'none') return sure ? { daysToLastFrost: 'none', daysToFirstFrost: 'none' } : {};
  const stated = calendar.climate.lastFrost !== undefined && calendar.climate.firstFrost !== undefined;
  const { last, first } = place.frost;
  // A first frost after midwinter belongs to the growing year before.
  const firstIn = first > last ? first : first + daysInYear;
  const at = (season: number, offset: number): Day => dayOfSeason(year + offset, season, place.south);
  const range = (days: number): Range => (sure || stated ? known(days, days === 0 ? 0 : calendar.climate.quality === 'station' ? 10 : 14) : estimate(days, 0, daysInYear + 1));
  const free = [-1, 0, 1].find((offset) => day >= at(last, offset) && day < at(firstIn, offset));
  if (free !== undefined) return { daysToLastFrost: range(0), daysToFirstFrost: range(at(firstIn, free) - day) };
  const nextLast = [-1, 0, 1].map((offset) => at(last, offset)).find((date) => date >= day) ?? day;
  return { daysToLastFrost: range(nextLast - day), daysToFirstFrost: range(0) };
};

import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { estimate, known } from './range.js';
import type { Range } from './seasonShape.js';
import { daysInYear } from './yearDay.js';
import { yearFrame } from './yearFrame.js';

/** Days to the end and to the beginning of frosts; missing where it is not known, or where frost never ends. */
export const frostOn = (
  calendar: Calendar, day: Day, year: number, sure: boolean,
): { readonly daysToLastFrost?: Range | 'none'; readonly daysToFirstFrost?: Range | 'none' } => {
  const place = calendar.climateYear;
  if (place === undefined || place.frost === 'all-year') return {};
  if (place.frost === 'none') return sure ? { daysToLastFrost: 'none', daysToFirstFrost: 'none' } : {};
  const stated = calendar.climate.lastFrost !== undefined && calendar.climate.firstFrost !== undefined;
  const { lastFrosts, firstFrosts } = yearFrame(calendar, year);
  const range = (days: number): Range => (sure || stated ? known(days, days === 0 ? 0 : calendar.climate.quality === 'station' ? 10 : 14) : estimate(days, 0, daysInYear + 1));
  const free = lastFrosts.findIndex((last, i) => day >= last && day < firstFrosts[i]!);
  if (free >= 0) return { daysToLastFrost: range(0), daysToFirstFrost: range(firstFrosts[free]! - day) };
  return { daysToLastFrost: range((lastFrosts.find((date) => date >= day) ?? day) - day), daysToFirstFrost: range(0) };
};

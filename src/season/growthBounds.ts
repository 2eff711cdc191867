import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { dayOfSeason, inGrowingYear } from './growingYear.js';
import { daysInYear } from './yearDay.js';

/** Earliest that buds of a temperate tree outdoors can swell: four weeks after midwinter, and not before the day has 10 h less a fortnight. */
const earliestSwell = (lightReturns: number): number => Math.max(28, lightReturns - 14);

/**
 * The most growing days that day length allows, whatever the weather: growth of a temperate tree outdoors ends when days fall under 11 h.
 *
 * Use it to bound an estimate. Trees that nights alone hold back are bounded by the year only.
 * @param calendar as `seasonCalendar` gave it
 * @param day days since 1970-01-01 UTC
 */
export const growthBounds = (calendar: Calendar, day: Day): number => {
  const place = calendar.climateYear;
  const model = calendar.traits.model;
  if (place === undefined || place.shortDays === undefined || model === 'tropical' || model === 'dry-deciduous') return daysInYear + 1;
  const { year } = inGrowingYear(day, place.south);
  const end = dayOfSeason(year, place.shortDays, place.south);
  if (day < end) return day >= dayOfSeason(year, earliestSwell(place.lightReturns) - 42, place.south) ? end - day : 0;
  const next = dayOfSeason(year + 1, earliestSwell(place.lightReturns), place.south);
  return day >= next - 42 ? dayOfSeason(year + 1, place.shortDays, place.south) - Math.max(day, next) : 0;
};

import type { Calendar } from './calendar.js';
import type { ClimateYear } from './climateYear.js';
import type { Day } from './day.js';
import { frostDates, frostThreshold } from './frostDates.js';
import { dayOfSeason } from './growingYear.js';
import { daysInYear } from './yearDay.js';

/** Frosts of one growing year. */
export interface FrostOfYear {
  /** Whether frost comes in most winters. */
  readonly reliable: boolean;
  /** Median last and first air frost (0 C at screen height). */
  readonly last?: Day;
  readonly first?: Day;
  /** One year in ten has an air frost after (before) this day. */
  readonly lastOneInTen?: Day;
  readonly firstOneInTen?: Day;
  /** Median last and first frost on the ground and at a pot's rim. */
  readonly lastAtRim?: Day;
  readonly firstAtRim?: Day;
}

/** Median distance of the 10 % dates from the medians: 15 days in spring, 14 in autumn (NOAA P50 and P90 dates of US stations). */
const oneInTenDays = { last: 15, first: 14 };

/** Ground and rim freeze at air minima of about 2 C (a Japanese study of frost observations 1951-2010, abstract read; its own error is 13 to 16 days). */
const rimC = 2;

const rimShift = (place: ClimateYear): { readonly last: number; readonly first: number } => {
  const range = Math.max(...place.meanC) - Math.min(...place.meanC);
  const swing = place.maxC.reduce((sum, value, i) => sum + value - (place.minC[i] ?? 0), 0) / daysInYear;
  const air = frostThreshold(range, swing, place.warmestMonthMinC);
  const at = (extra: number) => frostDates(place.minC, { lastC: air.lastC + extra, firstC: air.firstC + extra });
  const frost = at(0);
  const rim = at(rimC);
  // Where the curve gives no answer at one of the two heights: a degree is about a week in spring and autumn.
  return frost.kind === 'dates' && rim.kind === 'dates'
    ? { last: Math.max(0, rim.last - frost.last), first: Math.max(0, frost.first - rim.first) } : { last: 14, first: 14 };
};

/**
 * Median, one-in-ten and pot-rim frost dates of a calendar's growing year.
 *
 * Use it to print a year or to say when a pot must come in.
 * @param calendar as `seasonCalendar` gave it
 */
export const frostOfYear = (calendar: Calendar): FrostOfYear => {
  const place = calendar.climateYear;
  if (place === undefined || place.frost === 'none') return { reliable: false };
  if (place.frost === 'all-year') return { reliable: true };
  const rim = rimShift(place);
  const first = place.frost.first > place.frost.last ? place.frost.first : place.frost.first + daysInYear;
  const at = (seasonDay: number): Day => dayOfSeason(calendar.year, seasonDay, place.south);
  const last = place.frost.last;
  const middle = (last + first) / 2;
  return {
    reliable: true,
    last: at(last),
    first: at(first),
    lastOneInTen: at(Math.min(middle, last + oneInTenDays.last)),
    firstOneInTen: at(Math.max(middle, first - oneInTenDays.first)),
    lastAtRim: at(Math.min(middle, last + rim.last)),
    firstAtRim: at(Math.max(middle, first - rim.first)),
  };
};

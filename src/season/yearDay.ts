import type { Day } from './day.js';

/** Days of the model's year: 365, for normals know no leap year. */
export const daysInYear = 365;

/** Days in each month of that year. */
export const monthLengths: readonly number[] = [31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];

const monthStarts: readonly number[] = [0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334];

/** Brings any count of days into 0..364. */
export const wrapYear = (days: number): number => ((days % daysInYear) + daysInYear) % daysInYear;

/**
 * The place of a date in the model's year: 0 on 1 January, 364 on 31 December.
 *
 * 29 February stands with 28 February, so that a date has the same place in every year.
 * @param month 1..12
 * @param dayOfMonth 1..31
 */
export const yearDayOf = (month: number, dayOfMonth: number): number => {
  const start = monthStarts[month - 1] ?? 0;
  const length = monthLengths[month - 1] ?? 31;
  return start + Math.min(dayOfMonth, length) - 1;
};

/** The year and the place in the model's year of a day number. */
export const yearAndYearDay = (day: Day): { readonly year: number; readonly yearDay: number } => {
  const date = new Date(day * 86_400_000);
  return { year: date.getUTCFullYear(), yearDay: yearDayOf(date.getUTCMonth() + 1, date.getUTCDate()) };
};

/** The day number of a place in the model's year, in a given year; places beyond the year run on into the next. */
export const dayAt = (year: number, yearDay: number): Day => {
  const whole = Math.floor(yearDay);
  const inYear = wrapYear(whole);
  const actualYear = year + (whole - inYear) / daysInYear;
  let month = 11;
  while (month > 0 && (monthStarts[month] ?? 0) > inYear) month -= 1;
  const at = new Date(0);
  at.setUTCFullYear(actualYear, month, inYear - (monthStarts[month] ?? 0) + 1);
  return Math.round(at.getTime() / 86_400_000);
};

/**
 * The place in the model's year of a `MM-DD` text.
 *
 * @throws RangeError where the text is no day of a year
 */
export const yearDayOfText = (monthDay: string): number => {
  const parts = /^(\d{2})-(\d{2})$/.exec(monthDay);
  const month = Number(parts?.[1]);
  const dayOfMonth = Number(parts?.[2]);
  const longest = month === 2 ? 29 : (monthLengths[month - 1] ?? 0);
  if (!parts || month < 1 || month > 12 || dayOfMonth < 1 || dayOfMonth > longest) {
    throw new RangeError(`\`${monthDay}\` is not a day of the year; write MM-DD`);
  }
  return yearDayOf(month, dayOfMonth);
};

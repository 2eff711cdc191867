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

const isLeap = (year: number): boolean => (year % 4 === 0 && year % 100 !== 0) || year % 400 === 0;

/** Day number of 1 January by the Gregorian rule; a year of days asks for thousands of these, so no Date is made. */
const newYear = (year: number): Day =>
  365 * (year - 1970) + Math.floor((year - 1969) / 4) - Math.floor((year - 1901) / 100) + Math.floor((year - 1601) / 400);

/** The day number of a place in the model's year, in a given year; places beyond the year run on into the next. */
export const dayAt = (year: number, yearDay: number): Day => {
  const whole = Math.floor(yearDay);
  const inYear = wrapYear(whole);
  const actualYear = year + (whole - inYear) / daysInYear;
  return newYear(actualYear) + inYear + (inYear > 58 && isLeap(actualYear) ? 1 : 0);
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

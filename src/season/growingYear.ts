import type { Day } from './day.js';
import { dayAt, daysInYear, wrapYear, yearAndYearDay } from './yearDay.js';

/** Place of midwinter in the model's year: 22 December in the north, 22 June in the south. */
export const midwinter = (south: boolean): number => (south ? 172 : 355);

/** Season day (days since the last midwinter, 0..364) of a place in the model's year. */
export const seasonDayOf = (yearDay: number, south: boolean): number => wrapYear(yearDay - midwinter(south));

/** A day within its growing year, which runs from midwinter to midwinter and is named by the calendar year it begins in. */
export interface DayInYear { readonly year: number; readonly seasonDay: number }

export const inGrowingYear = (day: Day, south: boolean): DayInYear => {
  const { year, yearDay } = yearAndYearDay(day);
  return { year: yearDay >= midwinter(south) ? year : year - 1, seasonDay: seasonDayOf(yearDay, south) };
};

/** The day number of a season day of a growing year; days before 0 and after 364 reach into the years beside it. */
export const dayOfSeason = (year: number, seasonDay: number, south: boolean): Day =>
  dayAt(year, midwinter(south) + seasonDay);

/** Turns 365 values from 1 January on into 365 values from midwinter on. */
export const fromMidwinter = (values: readonly number[], south: boolean): readonly number[] => {
  const start = midwinter(south);
  return values.map((_, i) => values[(start + i) % daysInYear] ?? 0);
};

import { addDays, differenceInCalendarDays, formatISO, parseISO } from 'date-fns';
import { utc } from './utc.js';

/** A day, as whole days since 1970-01-01 UTC: no clock, no time zone. */
export type Day = number;

const epoch = utc(0);

/** The same dates come again and again; past so many they are forgotten, and read anew. */
const mostKept = 4096;
const read = new Map<string, Day>();

/** The day number of an ISO date; NaN where no calendar has it. */
const readDay = (iso: string): Day => {
  let day = read.get(iso);
  if (day === undefined) {
    day = differenceInCalendarDays(parseISO(iso, { in: utc }), epoch, { in: utc });
    if (read.size >= mostKept) read.clear();
    read.set(iso, day);
  }
  return day;
};

/** Whether a text is a date of the calendar, YYYY-MM-DD. */
export const isDate = (iso: string): boolean => /^\d{4}-\d{2}-\d{2}$/.test(iso) && !Number.isNaN(readDay(iso));

/**
 * The day number of an ISO date.
 *
 * Use it at the edge, where a proposal's `YYYY-MM-DD` comes in.
 * @param iso a calendar date, `YYYY-MM-DD`
 * @throws RangeError where the text is no date of the calendar (`2026-02-29`)
 * @example dayOf('1970-01-02') // 1
 */
export const dayOf = (iso: string): Day => {
  if (!isDate(iso)) throw new RangeError(`\`${iso}\` is not a date of the calendar; write YYYY-MM-DD`);
  return readDay(iso);
};

/**
 * The ISO date of a day number.
 *
 * Use it at the edge, where an answer goes out.
 * @param day days since 1970-01-01 UTC; a fraction is cut off
 * @example isoOf(1) // '1970-01-02'
 */
export const isoOf = (day: Day): string => formatISO(addDays(epoch, Math.floor(day)), { representation: 'date' });

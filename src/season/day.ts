/** A day, as whole days since 1970-01-01 UTC: no clock, no time zone. */
export type Day = number;

const millisecondsPerDay = 86_400_000;

/**
 * The day number of an ISO date.
 *
 * Use it at the edge, where a proposal's `YYYY-MM-DD` comes in.
 * @param iso a calendar date, `YYYY-MM-DD`
 * @throws RangeError where the text is no date of the calendar (`2026-02-29`)
 * @example dayOf('1970-01-02') // 1
 */
export const dayOf = (iso: string): Day => {
  const at = /^\d{4}-\d{2}-\d{2}$/.test(iso) ? Date.parse(`${iso}T00:00:00Z`) : Number.NaN;
  if (Number.isNaN(at) || new Date(at).toISOString().slice(0, 10) !== iso) {
    throw new RangeError(`\`${iso}\` is not a date of the calendar; write YYYY-MM-DD`);
  }
  return at / millisecondsPerDay;
};

/**
 * The ISO date of a day number.
 *
 * Use it at the edge, where an answer goes out.
 * @param day days since 1970-01-01 UTC; a fraction is cut off
 * @example isoOf(1) // '1970-01-02'
 */
export const isoOf = (day: Day): string => new Date(Math.floor(day) * millisecondsPerDay).toISOString().slice(0, 10);

const written: readonly (readonly [form: RegExp, order: readonly [year: number, month: number, day: number]])[] = [
  [/^(\d{4})[-./ ](\d{1,2})[-./ ](\d{1,2})$/, [1, 2, 3]],
  [/^(\d{1,2})\. ?(\d{1,2})\. ?(\d{4})$/, [3, 2, 1]],
];

/**
 * A day that is written otherwise, as ISO 8601 writes it, where that can mean but one: the year first, or the day first before dots.
 *
 * @param pattern what it is to look like; a day without a year, say, is no near miss of one with a year
 */
export const nearDate = (date: string, pattern: string): string | undefined => {
  for (const [form, order] of written) {
    const found = form.exec(date);
    const iso = found === null ? '' : order.map((part) => found[part]!.padStart(2, '0')).join('-');
    if (iso !== '' && new RegExp(pattern).test(iso)) return iso;
  }
  return undefined;
};

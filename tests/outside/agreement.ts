import { expect } from 'vitest';

export interface Compared { readonly id: string; readonly agrees: boolean; readonly found: string }

const tallies: string[] = [];

/** What each comparison of the test file came to so far, to be printed at its end. */
export const tallied = (): string => tallies.join('\n');

/**
 * Holds a comparison to 90 %, and its disagreements to a written list: each has a reason, and none stays on the list once it is gone.
 * `left` says how many were not compared, and why.
 */
export const holdTo = (title: string, compared: readonly Compared[], listed: Readonly<Record<string, string>>, left: string): void => {
  const differ = compared.filter((one) => !one.agrees);
  const agree = compared.length - differ.length;
  tallies.push(`${title}: agree ${agree}, differ ${differ.length} (listed ${Object.keys(listed).length}), of ${compared.length}: ${Math.round((100 * agree) / compared.length)} %; ${left}`);
  expect(differ.map((one) => one.id).sort(), differ.map((one) => `${one.id}: ${one.found}`).join('; ')).toEqual(Object.keys(listed).sort());
  for (const reason of Object.values(listed)) expect(reason.length).toBeGreaterThan(15);
  expect(agree / compared.length).toBeGreaterThanOrEqual(0.9);
};

import { severity } from '../../engine/verdict.js';
import type { Verdict } from '../../knowledge/knowledge.js';
import { dayOf, isoOf } from '../../season/day.js';
import type { Ready } from '../ready.js';

/** How far ahead is looked: fourteen months. */
const daysAhead = 425;

/** Every so many days: turning points of a season are known no better. */
const step = 3;

export interface BestDay {
  readonly date: string;
  readonly verdict: Verdict;
}

/** The first day from a date on which this work is judged as mildly as on any of the next fourteen months. */
export const bestDay = async ({ judge }: Pick<Ready, 'judge'>, from: string): Promise<BestDay> => {
  const first = dayOf(from);
  let best: BestDay | undefined;
  for (let ahead = 0; ahead < daysAhead; ahead += step) {
    const { verdict } = await judge.on(first + ahead);
    if (best === undefined || severity(verdict) < severity(best.verdict)) best = { date: isoOf(first + ahead), verdict };
    if (verdict === 'allowed') break;
  }
  return best!;
};

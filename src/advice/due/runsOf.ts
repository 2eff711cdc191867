import type { Day } from '../../season/day.js';

/** Days on end. */
export interface DayRun {
  readonly from: Day;
  readonly to: Day;
}

/** The runs of days, from one day to another, on which something holds. */
export const runsOf = async (from: Day, to: Day, holds: (day: Day) => Promise<boolean>): Promise<readonly DayRun[]> => {
  const runs: { from: Day; to: Day }[] = [];
  for (let day = from; day <= to; day++) {
    if (!(await holds(day))) continue;
    const last = runs.at(-1);
    if (last?.to === day - 1) last.to = day;
    else runs.push({ from: day, to: day });
  }
  return runs;
};

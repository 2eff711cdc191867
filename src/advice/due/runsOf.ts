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

/** The run of days around one on which something holds, within bounds. */
export const runAt = async (day: Day, holds: (day: Day) => Promise<boolean>, earliest: Day, latest: Day): Promise<DayRun> => {
  let [from, to] = [day, day];
  while (from > earliest && (await holds(from - 1))) from--;
  while (to < latest && (await holds(to + 1))) to++;
  return { from, to };
};

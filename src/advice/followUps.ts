import type { Assessment } from '../contract/types.generated.js';
import { evaluate } from '../engine/evaluate.js';
import type { Residual } from '../engine/specialise.js';
import type { Read } from '../facts/asked.js';
import type { Figure, FollowUp } from '../knowledge/knowledge.js';
import { type Day, isoOf } from '../season/day.js';
import { message } from './message.js';
import type { Prepared } from './prepare.js';

type After = Assessment['after'][number];

/** So many days that count: at most two years ahead, for a tree that hardly ever grows. */
const mostDays = 730;

/** The day on which so many days have passed that count: all of them, or those of some phases; a day whose phase is not known counts. */
const dayAfter = (days: number, from: Day, through: readonly string[] | undefined, { on }: Prepared): Day => {
  if (through === undefined) return from + days;
  let day = from;
  for (let left = days; left > 0 && day < from + mostDays; day++) {
    const asked = on(day);
    const phase = asked.season(undefined, asked.proposal.tree.standing ?? 'outdoors')?.phase;
    if (phase === undefined || through.includes(phase)) left--;
  }
  return day;
};

/** What is to be done after the work, and when: with dates where the day is known. */
export const followUpsOf = async (residuals: readonly Residual<FollowUp>[], prepared: Prepared, read: Read): Promise<readonly After[]> => {
  const { asked } = prepared;
  const figure = (each: Figure): number | undefined => {
    if (typeof each === 'number') return each;
    const trait = asked.traits[each.trait]?.is;
    return typeof trait === 'number' ? Math.round(trait * each.times) : undefined;
  };
  const due: { readonly from: number; readonly after: After }[] = [];
  for (const { residual, fires } of await evaluate(residuals, read)) {
    if (fires !== 'certainly') continue;
    const { rule } = residual;
    const [from, to] = [figure(rule.days[0]), figure(rule.days[1])];
    if (from === undefined || to === undefined) continue;
    const { day } = asked;
    const dates = day === undefined ? {} : { from: isoOf(dayAfter(from, day, rule.through, prepared)), to: isoOf(dayAfter(Math.max(from, to), day, rule.through, prepared)) };
    due.push({ from, after: { do: message(asked.knowledge, `after.${rule.id}`, { days: to }), ...dates, ...(rule.operation === undefined ? {} : { operation: { ...rule.operation } as NonNullable<After['operation']> }) } });
  }
  return due.sort((a, b) => a.from - b.from || (a.after.do.id < b.after.do.id ? -1 : 1)).map((each) => each.after);
};

import type { Assessment } from '../contract/types.generated.js';
import { evaluate } from '../engine/evaluate.js';
import type { Residual } from '../engine/specialise.js';
import type { Asked, Read } from '../facts/asked.js';
import type { Figure, FollowUp } from '../knowledge/knowledge.js';
import { isoOf } from '../season/day.js';
import { message } from './message.js';

type After = Assessment['after'][number];

/** What is to be done after the work, and when: with dates where the day is known. */
export const followUpsOf = async (residuals: readonly Residual<FollowUp>[], asked: Asked, read: Read): Promise<readonly After[]> => {
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
    const dates = asked.day === undefined ? {} : { from: isoOf(asked.day + from), to: isoOf(asked.day + Math.max(from, to)) };
    due.push({ from, after: { do: message(asked.knowledge, `after.${rule.id}`, { days: to }), ...dates, ...(rule.operation === undefined ? {} : { operation: { ...rule.operation } as NonNullable<After['operation']> }) } });
  }
  return due.sort((a, b) => a.from - b.from || (a.after.do.id < b.after.do.id ? -1 : 1)).map((each) => each.after);
};

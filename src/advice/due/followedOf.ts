import type { Proposal } from '../../contract/types.generated.js';
import { logEntries, type LogEntry } from '../../facts/past/logEntries.js';
import type { CollectedTree } from '../../knowledge/checkCollection.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { type Day, dayOf, isoOf } from '../../season/day.js';
import { followUpsOf } from '../followUps.js';
import type { Ready } from '../ready.js';
import { type DueItem, type DueOn, middleOf, type ReadyFor, windowOf } from './dueItem.js';
import { type DayRun, runsOf } from './runsOf.js';

/** How far ahead a day is looked for on which it may be done. */
const daysAhead = 430;

/** Within how many days overdue work is done on the first day that allows it; past them any day is looked for on which it is not advised against. */
const catchUpDays = 120;

/** How many days are told of for work that is overdue: the first ones. */
const overdueDays = 30;

const written = ({ op, written: told }: LogEntry): Proposal['operation'] => {
  const { date: _, outcome: __, note: ___, ...operation } = told;
  return { ...operation, op } as Proposal['operation'];
};

const sameBranch = (one: unknown, other: unknown): boolean => one === undefined || other === undefined || one === other;

/** Whether later work of the log did what was to follow. */
const done = (later: readonly LogEntry[], operation: { readonly op: string }, branch: unknown): boolean =>
  later.some((entry) => entry.op === operation.op && sameBranch(entry.written['branch'], branch));

/** The first days that are not over on which the work is allowed; for work that keeps, or else is not advised against, and then also past its time. */
const firstRun = async (from: Day, to: Day, day: Day, keeps: boolean, { judge }: Ready): Promise<DayRun | undefined> => {
  for (const [first, last] of keeps ? [[from, to], [to + 1, to + daysAhead]] as const : [[from, to]] as const) {
    for (const worst of keeps ? ['allowed', 'risky'] as const : ['allowed'] as const) {
      const run = (await runsOf(first, last, async (each) => [worst, 'allowed'].includes((await judge.verdictOn(each)).verdict))).find((each) => each.to >= day);
      if (run !== undefined) return run;
    }
  }
  return undefined;
};

/** What follows work of the log and was not done since: stubs to clean, wire to take off, shoots to thin. */
export const followedOf = async (each: CollectedTree, readyFor: ReadyFor, knowledge: Knowledge, { day, soonDays }: DueOn): Promise<readonly DueItem[]> => {
  const items: DueItem[] = [];
  const { log } = each.tree;
  if (log === undefined) return items;
  const entries = logEntries({ tree: each.tree } as Proposal);
  for (const [i, entry] of entries.entries()) {
    if (entry.latest > day) continue;
    const asDone = await readyFor(written(entry), entry.latest);
    const branch = entry.written['branch'];
    for (const after of await followUpsOf(asDone.residuals.followUps, asDone.prepared, (await asDone.judge()).facts.read)) {
      if (after.operation === undefined || after.from === undefined || after.to === undefined) continue;
      const [from, to] = [dayOf(after.from), dayOf(after.to)];
      const id = after.do.id.slice('after.'.length);
      const keeps = knowledge.followUps[id]?.keeps;
      const late = to < day;
      if (from > day + soonDays || (late && day - to > (keeps ?? 0)) || done(entries.slice(i + 1), after.operation, branch)) continue;
      const taken = knowledge.operations[after.operation.op]!.parameters;
      const told = Object.fromEntries(Object.entries(entry.written).filter(([name]) => ['branch', 'branchDiameterMm', 'branchToTrunk'].includes(name) && taken.includes(name)));
      const operation = { ...told, ...after.operation } as Proposal['operation'];
      const ready = await readyFor(operation, day);
      const whole = await firstRun(late ? day : from, late ? day + catchUpDays : to, day, keeps !== undefined, ready);
      if (whole === undefined || (!late && whole.from > day + soonDays)) continue;
      const run = late ? { from: whole.from, to: Math.min(whole.to, whole.from + overdueDays - 1) } : whole;
      const { verdict } = await ready.judge.verdictOn(middleOf(run));
      if (verdict === 'advise-against') continue;
      items.push({
        id: [each.id, id, isoOf(entry.latest), ...(branch === undefined ? [] : [String(branch)])].join('/'),
        tree: each.id, operation, window: windowOf(run, ready), state: late ? 'overdue' : run.from <= day ? 'open' : 'soon', ...(late ? { since: isoOf(to + 1) } : {}), verdict, why: after.do,
      });
    }
  }
  return items;
};

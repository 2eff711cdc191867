import type { Proposal } from '../../contract/types.generated.js';
import { evaluate } from '../../engine/evaluate.js';
import type { CollectedTree } from '../../knowledge/checkCollection.js';
import type { Chore, Knowledge } from '../../knowledge/knowledge.js';
import { deriveFacts } from '../../facts/deriveFacts.js';
import { logEntries } from '../../facts/logEntries.js';
import { type Day, isoOf } from '../../season/day.js';
import { inGrowingYear } from '../../season/growingYear.js';
import { message } from '../message.js';
import type { Ready } from '../ready.js';
import { type DueItem, type DueOn, middleOf, type ReadyFor, windowOf } from './dueItem.js';
import { type DayRun, runsOf } from './runsOf.js';

/** How far back a time may have begun that is still open or was missed, and how long one may last. */
const daysBack = 400;
const daysAhead = 430;

/** Whether a chore's conditions hold on a day, with the facts that must be told. */
const holdsOf = (chore: Chore, { prepared, residuals }: Ready): ((day: Day) => Promise<boolean>) | undefined => {
  const residual = residuals.chores.find((each) => each.rule.id === chore.id);
  if (residual === undefined) return undefined;
  return async (day) => {
    const { read } = deriveFacts(prepared.on(day));
    if (chore.told.some((id) => read(id).state !== 'known')) return false;
    return (await evaluate([residual], read)).some(({ fires }) => fires === 'certainly');
  };
};

const lastDone = (tree: Proposal['tree'], ops: readonly string[], proposal: Proposal): string => {
  const done = logEntries(proposal).filter(({ op }) => ops.includes(op)).at(-1);
  return done === undefined ? (ops.includes('repot') && tree.lastRepotted !== undefined ? tree.lastRepotted : 'first') : isoOf(done.latest);
};

/** The first of a chore's ways that may be done in a run of days, and how it is judged in the middle of it. */
const wayIn = async (chore: Chore, run: DayRun, readyFor: ReadyFor, { day }: DueOn): Promise<{ readonly ready: Ready; readonly verdict: DueItem['verdict'] } | undefined> => {
  let risky: Ready | undefined;
  for (const way of chore.ways) {
    const ready = await readyFor({ ...way } as Proposal['operation'], day);
    const { verdict } = await ready.judge.verdictOn(middleOf(run));
    if (verdict === 'allowed') return { ready, verdict };
    if (verdict === 'risky') risky ??= ready;
  }
  return risky === undefined ? undefined : { ready: risky, verdict: 'risky' };
};

/** The year in which the cold season of a day began: the growing year that was under way four months before. */
const coldSeason = (day: Day, { prepared }: Ready): string => String(inGrowingYear(day - 120, (prepared.asked.climate.latitude ?? 0) < 0).year);

const stateOf = (run: DayRun, { day, soonDays }: DueOn): 'open' | 'soon' | undefined =>
  run.from <= day ? (run.to >= day ? 'open' : undefined) : run.from <= day + soonDays ? 'soon' : undefined;

/** A chore that must be done before the first day on which its conditions hold. */
const beforehand = async (leadDays: number, holds: (day: Day) => Promise<boolean>, { day, soonDays }: DueOn): Promise<{ readonly run: DayRun; readonly state: DueItem['state'] } | undefined> => {
  if (await holds(day)) return { run: { from: day, to: day + leadDays }, state: 'overdue' };
  for (let first = day + 1; first <= day + soonDays + leadDays; first++) {
    if (await holds(first)) return { run: { from: first - leadDays, to: first - 1 }, state: first - leadDays <= day ? 'open' : 'soon' };
  }
  return undefined;
};

/** A chore that is done while its conditions hold and the rules allow it; one that keeps is overdue in its next time once one has gone by. */
const meanwhile = async (chore: Chore, holds: (day: Day) => Promise<boolean>, { judge }: Ready, on: DueOn): Promise<{ readonly run: DayRun; readonly state: DueItem['state'] } | undefined> => {
  const fits = async (day: Day): Promise<boolean> => (await holds(day)) && (await judge.verdictOn(day)).verdict === 'allowed';
  const { day, soonDays } = on;
  const runs = await runsOf(day - daysBack, day + soonDays, fits);
  const now = runs.find((run) => stateOf(run, on) !== undefined);
  /* A run that begins or ends where looking did goes on: its days are as far as one can see. */
  const whole = async (run: DayRun): Promise<DayRun> => {
    let { to } = run;
    while (to < run.from + daysAhead && (await fits(to + 1))) to++;
    return { from: run.from, to };
  };
  if (now === undefined) return undefined;
  const missed = chore.keeps && runs.some((run) => run.to < day) && (await holds(day));
  return { run: await whole(now), state: missed ? 'overdue' : stateOf(now, on)! };
};

/** What comes round on one tree: the chores whose conditions hold, each in a window in which it may be done. */
export const choresOf = async (each: CollectedTree, readyFor: ReadyFor, knowledge: Knowledge, on: DueOn): Promise<readonly DueItem[]> => {
  const items: DueItem[] = [];
  for (const chore of Object.values(knowledge.chores)) {
    const first = await readyFor({ ...chore.ways[0]! } as Proposal['operation'], on.day);
    const holds = holdsOf(chore, first);
    if (holds === undefined) continue;
    const due = chore.leadDays === undefined ? await meanwhile(chore, holds, first, on) : await beforehand(chore.leadDays, holds, on);
    const way = due === undefined ? undefined : await wayIn(chore, due.run, readyFor, on);
    if (due === undefined || way === undefined) continue;
    const window = windowOf(due.run, first);
    const since = lastDone(each.tree, chore.ways.map(({ op }) => op), first.proposal);
    items.push({
      id: [each.id, chore.id, since, ...(chore.leadDays !== undefined ? [coldSeason(on.day, first)] : chore.keeps ? [] : [window.from.slice(0, 4)])].join('/'),
      tree: each.id, operation: way.ready.proposal.operation, window, state: due.state, verdict: way.verdict,
      why: message(knowledge, `due.${chore.id}`, { date: isoOf(due.run.to + 1) }),
    });
  }
  return items;
};

import type { Proposal } from '../../contract/types.generated.js';
import { evaluate } from '../../engine/evaluate.js';
import type { CollectedTree } from '../../knowledge/checkCollection.js';
import type { Chore, Knowledge } from '../../knowledge/knowledge.js';
import { deriveFacts } from '../../facts/deriveFacts.js';
import { logEntries } from '../../facts/past/logEntries.js';
import { type Day, isoOf } from '../../season/day.js';
import { inGrowingYear } from '../../season/growingYear.js';
import { message, wordFor } from '../message.js';
import type { Ready } from '../ready.js';
import { type DueItem, type DueOn, middleOf, type ReadyFor, windowOf } from './dueItem.js';
import { type DayRun, runAt, runsOf } from './runsOf.js';

/** How long a time may last, and how far back the beginning of one is looked for. */
const longest = 430;

type Holds = (day: Day) => Promise<boolean>;

/** When a chore is due, and by which operation. */
interface Time {
  readonly run: DayRun;
  readonly state: DueItem['state'];
  /** The day from which it is overdue. */
  readonly since?: Day;
  readonly ready: Ready;
  readonly verdict: DueItem['verdict'];
}

/** Whether a chore's conditions hold on a day, with the facts that must be told. */
const holdsOf = (chore: Chore, { prepared, residuals }: Ready): Holds | undefined => {
  const residual = residuals.chores.find((each) => each.rule.id === chore.id);
  if (residual === undefined) return undefined;
  return async (day) => {
    const { read } = deriveFacts(prepared.on(day));
    if (chore.told.some((id) => read(id).state !== 'known')) return false;
    return (await evaluate([residual], read)).some(({ fires }) => fires === 'certainly');
  };
};

/** The operations that do a chore. */
const doneBy = ({ ways, doneBy: others }: Chore): readonly string[] => [...ways.map(({ op }) => op), ...others];

/** Whether a chore was done so lately that it is not due again. */
const doneLately = (chore: Chore, proposal: Proposal, againDays: number, day: Day): boolean =>
  logEntries(proposal).some(({ op, earliest, latest }) => doneBy(chore).includes(op) && earliest <= day && latest > day - againDays);

const lastDone = (chore: Chore, proposal: Proposal): string => {
  const done = logEntries(proposal).filter(({ op }) => doneBy(chore).includes(op)).at(-1);
  return done === undefined ? ((chore.told.includes('history.daysSinceRepot') ? proposal.tree.lastRepotted : undefined) ?? 'never') : isoOf(done.latest);
};

/** The first of a chore's ways that may be done in a run of days, and how it is judged in the middle of it. */
const wayIn = async (chore: Chore, run: DayRun, readyFor: ReadyFor, { day }: DueOn): Promise<Pick<Time, 'ready' | 'verdict'> | undefined> => {
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

/** A chore that must be done before the first day on which its conditions hold; overdue while they do. */
const beforehand = async (chore: Chore, leadDays: number, holds: Holds, readyFor: ReadyFor, on: DueOn): Promise<Time | undefined> => {
  const { day, soonDays } = on;
  let first = day;
  if (await holds(day)) {
    const { from, to } = await runAt(day, holds, day - longest, day + leadDays);
    if (day >= from + (chore.keeps ?? 0)) return undefined;
    const run = { from: day, to };
    const way = await wayIn(chore, run, readyFor, on);
    return way === undefined ? undefined : { run, state: 'overdue', since: from, ...way };
  }
  while (first <= day + soonDays + leadDays && !(await holds(first))) first++;
  if (first > day + soonDays + leadDays) return undefined;
  const run = { from: first - leadDays, to: first - 1 };
  const way = await wayIn(chore, run, readyFor, on);
  return way === undefined ? undefined : { run, state: run.from <= day ? 'open' : 'soon', ...way };
};

/** A chore that is done while its conditions hold and the rules allow it, in the first of its ways that has a time; one that keeps is overdue where a time for it went by. */
const meanwhile = async (chore: Chore, holds: Holds, readyFor: ReadyFor, { day, soonDays }: DueOn): Promise<Time | undefined> => {
  const lasts = chore.lasts ?? longest;
  for (const way of chore.ways) {
    const ready = await readyFor({ ...way } as Proposal['operation'], day);
    const fits = async (each: Day): Promise<boolean> => (await holds(each)) && (await ready.judge.verdictOn(each)).verdict === 'allowed';
    let next = day;
    while (next <= day + soonDays && !(await fits(next))) next++;
    if (next > day + soonDays) continue;
    const { from, to } = await runAt(next, fits, next === day ? day - longest : next, next + lasts);
    const told = { from, to: Math.min(to, from + lasts - 1) };
    const missed = chore.keeps === undefined ? [] : await runsOf(day - chore.keeps, Math.min(from, day) - 1, fits);
    const past = missed.length > 0 ? missed.at(-1)!.to + 1 : told.to < day ? told.to + 1 : undefined;
    if (past === undefined) return { run: told, state: from <= day ? 'open' : 'soon', ready, verdict: 'allowed' };
    if (chore.keeps === undefined || past + chore.keeps < day) continue;
    return { run: told.to < day ? { from: day, to: Math.min(to, day + lasts - 1) } : told, state: 'overdue', since: past, ready, verdict: 'allowed' };
  }
  return undefined;
};

/** Facts that must be told for a chore and are not, where it could be due otherwise. */
const untoldFor = async (chore: Chore, { prepared, residuals }: Ready, day: Day): Promise<readonly string[]> => {
  const { read } = deriveFacts(prepared.on(day));
  const missing = chore.told.filter((id) => read(id).state !== 'known');
  return missing.length > 0 && (await evaluate(residuals.chores.filter((each) => each.rule.id === chore.id), read)).length > 0 ? missing : [];
};

/** What comes round on one tree: the chores whose conditions hold, each in a window in which it may be done; and what would have to be told for others. */
export const choresOf = async (each: CollectedTree, readyFor: ReadyFor, knowledge: Knowledge, on: DueOn): Promise<{ readonly items: readonly DueItem[]; readonly untold: readonly string[] }> => {
  const items: DueItem[] = [];
  const untold: string[] = [];
  for (const chore of Object.values(knowledge.chores)) {
    const first = await readyFor({ ...chore.ways[0]! } as Proposal['operation'], on.day);
    const { proposal } = first;
    const holds = doneLately(chore, proposal, knowledge.againDays, on.day) ? undefined : holdsOf(chore, first);
    if (holds === undefined) continue;
    untold.push(...(await untoldFor(chore, first, on.day)));
    const due = chore.leadDays === undefined ? await meanwhile(chore, holds, readyFor, on) : await beforehand(chore, chore.leadDays, holds, readyFor, on);
    if (due === undefined) continue;
    const window = windowOf(due.run, due.ready);
    const since = lastDone(chore, proposal);
    const harm = due.since ?? due.run.to + 1;
    const season = chore.leadDays !== undefined ? [coldSeason(harm, first)] : chore.keeps === undefined ? [window.from.slice(0, 4)] : [];
    items.push({
      id: [each.id, chore.id, since, ...season].join('/'),
      tree: each.id, operation: due.ready.proposal.operation, window, state: due.state, ...(due.since === undefined ? {} : { since: isoOf(due.since) }), verdict: due.verdict,
      why: message(knowledge, `due.${chore.id}`, { date: isoOf(harm), since: since === 'never' ? wordFor(since, knowledge) : since }),
    });
  }
  return { items, untold };
};

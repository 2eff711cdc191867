import { formatISO, lastDayOfMonth, lastDayOfYear, parseISO } from 'date-fns';
import type { Proposal } from '../../contract/types.generated.js';
import { type Day, dayOf } from '../../season/day.js';
import { utc } from '../../season/utc.js';

/** One piece of work of a tree's log, in order of time; a date known to the year or month spans those days. */
export interface LogEntry {
  readonly op: string;
  readonly earliest: Day;
  readonly latest: Day;
  readonly written: Readonly<Record<string, unknown>>;
}

/** The days that a date may mean. */
interface DateSpan {
  readonly earliest: Day;
  readonly latest: Day;
}

/** The days that an ISO date of any exactness may mean: a year, a month or a day. */
export const spanOf = (iso: string): DateSpan => {
  const from = parseISO(iso, { in: utc });
  const to = iso.length === 4 ? lastDayOfYear(from) : iso.length === 7 ? lastDayOfMonth(from) : from;
  return { earliest: dayOf(formatISO(from, { representation: 'date' })), latest: dayOf(formatISO(to, { representation: 'date' })) };
};

const kept = new WeakMap<object, readonly LogEntry[]>();

/** The work of a tree's log, oldest first; sightings are left out. */
export const logEntries = (proposal: Proposal): readonly LogEntry[] => {
  const log = proposal.tree.log as readonly Readonly<Record<string, unknown>>[] | undefined;
  if (log === undefined) return [];
  const read = kept.get(log);
  if (read !== undefined) return read;
  const entries = log
    .filter((written) => typeof written['op'] === 'string')
    .map((written) => ({ op: written['op'] as string, ...spanOf(written['date'] as string), written }))
    .sort((a, b) => a.earliest - b.earliest || a.latest - b.latest);
  kept.set(log, entries);
  return entries;
};

const repotted = new WeakMap<object, DateSpan>();

/** The days on which a tree may have been repotted last, by its own field; undefined where that names none. Days by the hundred ask for it: a date is read once. */
export const lastRepotted = ({ tree }: Proposal): DateSpan | undefined => {
  if (tree.lastRepotted === undefined || tree.lastRepotted === 'never') return undefined;
  const span = repotted.get(tree) ?? spanOf(tree.lastRepotted);
  repotted.set(tree, span);
  return span;
};

/** Work of the very day that is asked about: one sitting with it. */
export const sameSitting = (proposal: Proposal, day: Day | undefined): readonly LogEntry[] =>
  day === undefined ? [] : logEntries(proposal).filter((entry) => entry.earliest === day && entry.latest === day);

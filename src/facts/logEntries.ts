import type { Proposal } from '../contract/types.generated.js';
import { type Day, dayOf } from '../season/day.js';

/** One piece of work of a tree's log, in order of time; a date known to the year or month spans those days. */
export interface LogEntry {
  readonly op: string;
  readonly earliest: Day;
  readonly latest: Day;
  readonly written: Readonly<Record<string, unknown>>;
}

export const spanOf = (iso: string): { readonly earliest: Day; readonly latest: Day } => {
  if (iso.length === 10) return { earliest: dayOf(iso), latest: dayOf(iso) };
  const [year, month] = iso.split('-').map(Number) as [number, number | undefined];
  if (month === undefined) return { earliest: dayOf(`${iso}-01-01`), latest: dayOf(`${iso}-12-31`) };
  const next = month === 12 ? `${String(year + 1).padStart(4, '0')}-01-01` : `${iso.slice(0, 5)}${String(month + 1).padStart(2, '0')}-01`;
  return { earliest: dayOf(`${iso}-01`), latest: dayOf(next) - 1 };
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

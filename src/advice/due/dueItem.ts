import type { Message, Proposal } from '../../contract/types.generated.js';
import type { CollectedTree } from '../../knowledge/checkCollection.js';
import { type Day, isoOf } from '../../season/day.js';
import type { Ready } from '../ready.js';
import type { DayRun } from './runsOf.js';

/** One piece of work that is due, or soon will be, or should have been done. */
export interface DueItem {
  /** The same piece of work keeps it, whenever it is asked. */
  readonly id: string;
  readonly tree: string;
  readonly operation: Proposal['operation'];
  readonly window: { readonly from: string; readonly to: string; readonly plusMinusDays: number };
  readonly state: 'overdue' | 'open' | 'soon';
  /** The day from which it is overdue. */
  readonly since?: string;
  readonly verdict: 'allowed' | 'risky';
  readonly why: Message;
}

/** The day, and how far ahead counts as soon. */
export interface DueOn {
  readonly day: Day;
  readonly soonDays: number;
}

/** A piece of work made ready to be judged on any day. */
export type ReadyFor = (operation: Proposal['operation'], day: Day) => Promise<Ready>;

export const readyForTree = (ready: (written: unknown) => Promise<Ready>, { tree, where }: CollectedTree): ReadyFor =>
  async (operation, day) => await ready({ tree, operation, date: isoOf(day), ...(where === undefined ? {} : { where }) });

/** The middle of a run of days: what stands for all of it. */
export const middleOf = ({ from, to }: DayRun): Day => Math.floor((from + to) / 2);

/** A run of days as it is told, with how far off it may be. */
export const windowOf = (run: DayRun, { prepared }: Ready): DueItem['window'] => {
  const { asked, on } = prepared;
  const season = on(middleOf(run)).season(undefined, asked.proposal.tree.standing ?? 'outdoors');
  return { from: isoOf(run.from), to: isoOf(run.to), plusMinusDays: Math.round(season?.plusMinusDays ?? asked.climate.plusMinusDays) };
};

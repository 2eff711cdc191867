import { takesBranch } from '../../knowledge/takesBranch.js';
import type { Branch } from '../../structure/tree.js';
import type { Asked } from '../asked.js';
import { type LogEntry, sameSitting } from '../past/logEntries.js';

/** A branch that the log says was taken off in the same sitting, and how that was written. */
export interface TakenToo {
  readonly branch: Branch;
  readonly written: Readonly<Record<string, unknown>>;
}

/** Whether the work that is asked about, or one of some entries, takes a branch or kills it (bark that is stripped from a trunk does neither), or any work of the sitting what bears it. */
const goes = (id: string, by: readonly LogEntry[], sitting: readonly LogEntry[], asked: Asked): boolean => {
  const own = { written: asked.proposal.operation as unknown as LogEntry['written'] };
  let entries = by;
  for (let at: string | undefined = id; at !== undefined; entries = sitting) {
    const here: string = at;
    if ([own, ...entries].some(({ written }) => written['branch'] === here && takesBranch(written, asked.knowledge))) return true;
    at = asked.built!.structure.branches.find((each) => each.id === here)?.from;
  }
  return false;
};

/** Whether a branch goes with other work than an entry of the log: with what bears it, with the work that is asked about, or with an earlier entry that takes the whole of it. */
export const goesAnyway = ({ id }: Branch, entry: LogEntry, sitting: readonly LogEntry[], asked: Asked): boolean => goes(id, sitting.slice(0, sitting.indexOf(entry)), sitting, asked);

/** Branches that other work of the same sitting takes off; one that goes anyway is not named again. */
export const takenToo = (asked: Asked): readonly TakenToo[] => {
  const sitting = sameSitting(asked.proposal, asked.day);
  const taken = sitting.flatMap((entry): readonly TakenToo[] => {
    const { written } = entry;
    const branch = asked.built?.structure.branches.find(({ id }) => id === written['branch']);
    return branch !== undefined && !goesAnyway(branch, entry, sitting, asked) && goes(branch.id, [entry], sitting, asked) ? [{ branch, written }] : [];
  });
  return taken.sort((a, b) => (a.branch.id < b.branch.id ? -1 : 1));
};

/** Ids of all branches that the sitting takes off, with all that grows from them. */
export const goneInSitting = (asked: Asked): ReadonlySet<string> => {
  const sitting = sameSitting(asked.proposal, asked.day);
  return new Set(asked.built!.structure.branches.map(({ id }) => id).filter((id) => goes(id, sitting, sitting, asked)));
};

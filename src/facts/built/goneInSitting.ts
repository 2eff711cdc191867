import type { Branch } from '../../structure/tree.js';
import type { Asked } from '../asked.js';
import { type LogEntry, sameSitting } from '../past/logEntries.js';

/** A branch that the log says was taken off in the same sitting, and how that was written. */
export interface TakenToo {
  readonly branch: Branch;
  readonly written: Readonly<Record<string, unknown>>;
}

/** Whether a branch goes anyway, with one that bears it: taken by the work that is asked about, or by other work of the sitting. */
export const goesWithBearer = ({ from }: Branch, entries: readonly LogEntry[], asked: Asked): boolean => {
  const takes = (op: string): boolean => asked.knowledge.operations[op]?.leaves.takesBranch === true;
  const { operation } = asked.proposal;
  const bearer = asked.built?.structure.branches.find(({ id }) => id === from);
  if (bearer === undefined) return false;
  const goes = (takes(operation.op) && operation.branch === from) || entries.some(({ op, written }) => takes(op) && written['branch'] === from);
  return goes || goesWithBearer(bearer, entries, asked);
};

/** Branches that other work of the same sitting takes off; one that goes with its bearer is not named again. */
export const takenToo = (asked: Asked): readonly TakenToo[] => {
  const entries = sameSitting(asked.proposal, asked.day);
  const taken = new Map<string, TakenToo>();
  for (const { op, written } of entries) {
    const branch = asked.built?.structure.branches.find(({ id }) => id === written['branch']);
    if (branch !== undefined && branch.id !== asked.proposal.operation.branch && asked.knowledge.operations[op]?.leaves.takesBranch === true && !goesWithBearer(branch, entries, asked)) taken.set(branch.id, { branch, written });
  }
  return [...taken.values()].sort((a, b) => (a.branch.id < b.branch.id ? -1 : 1));
};

/** Ids of all branches that the sitting takes off, with all that grows from them. */
export const goneInSitting = (asked: Asked): ReadonlySet<string> => {
  const gone = new Set(takenToo(asked).map(({ branch }) => branch.id));
  if (asked.operation.leaves.takesBranch === true && asked.proposal.operation.branch !== undefined) gone.add(asked.proposal.operation.branch);
  for (let before = -1; before !== gone.size;) {
    before = gone.size;
    for (const branch of asked.built?.structure.branches ?? []) if (gone.has(branch.from)) gone.add(branch.id);
  }
  return gone;
};

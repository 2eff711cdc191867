import type { Weighing } from './weighing.js';
import { has } from './bits.js';

/** What one choice, kept or gone as it is in `kept`, costs beside some others: infinitely much where it may not be so. */
export const costBeside = ({ keep, remove, cut, pair, parent, lockedKept, lockedGone }: Weighing, i: number, kept: number, others: number): number => {
  const stays = has(kept, i);
  if (has(stays ? lockedGone : lockedKept, i)) return Infinity;
  const from = parent[i];
  let cost = stays ? keep[i]! : remove[i]!;
  if (from === undefined) cost += stays ? 0 : cut[i]!;
  else if (has(others, from)) cost += stays === has(kept, from) ? 0 : stays ? Infinity : cut[i]!;
  for (let j = 0; j < keep.length; j++) {
    if (!has(others, j)) continue;
    if (stays && has(kept, j)) cost += pair[i]![j]!;
    if (parent[j] === i && stays !== has(kept, j)) cost += stays ? cut[j]! : Infinity;
  }
  return cost;
};

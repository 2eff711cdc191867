import type { Weighing } from './weighing.js';
import { bit, has } from './bits.js';
import { costBeside } from './costBeside.js';
import { eliminationTree, type Link, linksWithin } from './eliminationTree.js';
import { sureToGo } from './sureToGo.js';

/** The least that what is undecided can cost, whatever was decided: of each choice and all that hangs on it, by what of its scope is kept. */
export interface LeastCosts {
  /** What is not held one way or the other, in the order in which it is decided. */
  readonly order: readonly number[];
  /** What hangs on each choice, and on none. */
  readonly below: readonly (readonly number[])[];
  readonly roots: readonly number[];
  /** Where in the table of a choice to look once so many are kept. */
  readonly at: (choice: number, kept: number) => number;
  /** The tables, where each choice that is gone costs so much more. */
  readonly tables: (toll: readonly number[]) => readonly Float64Array[];
}

/** On so many others a choice hangs at most: each more doubles what is worked out beforehand. The cheapest links beyond are left out of the bound. */
const widest = 8;

/**
 * Works out, once and for all, what the rest of a choice costs at least: what keeping and taking away cost, side by side and with what they grow from,
 * and among the few that hang together also what the sittings bear. What sums of all and the set as a whole add is left to the search.
 */
export const leastCosts = (weighing: Weighing): LeastCosts => {
  const { ids, pair, parent, lockedKept, lockedGone, contend, bears } = weighing;
  const held = lockedKept + lockedGone;
  const all = bit(ids.length) - 1;
  const open = ids.flatMap((_, i) => (has(held, i) ? [] : [i]));
  const pairs = open.flatMap((i) => open.filter((j) => j < i).map((j): Link => [i, j]));
  const cost = ([i, j]: Link): number => (parent[i] === j || parent[j] === i ? Infinity : pair[i]![j]!);
  const links = linksWithin(ids.length, [
    ...pairs.filter((link) => cost(link) > 0).sort((a, b) => (cost(a) === cost(b) ? 0 : cost(b) - cost(a))),
    ...pairs.filter((link) => cost(link) === 0 && has(contend[link[0]]!, link[1])),
  ], widest);
  const tree = eliminationTree(ids.length, links);
  const { scope, below } = tree;
  const order = tree.order.filter((i) => !has(held, i));
  /* What is held is decided before all else, and no table hangs on it. */
  const before = ids.map(() => held);
  for (const [a, b] of links) {
    const [first, then] = order.indexOf(a) < order.indexOf(b) ? [a, b] : [b, a];
    before[then] = before[then]! + bit(first);
  }

  const at = (choice: number, kept: number): number => {
    const hangsOn = scope[choice]!;
    let row = 0;
    for (let k = 0; k < hangsOn.length; k++) if (has(kept, hangsOn[k]!)) row += 1 << k;
    return row;
  };
  const rowsOf = (i: number, stays: boolean) => {
    const hangsOn = scope[i]!;
    const known = hangsOn.reduce((set, j) => set + bit(j), held + bit(i));
    const kept = Array.from({ length: 2 ** hangsOn.length }, (_, row) => hangsOn.reduce((set, j, k) => (has(row, k) ? set + bit(j) : set), lockedKept + (stays ? bit(i) : 0)));
    return {
      cost: Float64Array.from(kept, (set) => (bears(sureToGo(weighing, (all - set) & known, set)) ? costBeside(weighing, i, set, before[i]!) : Infinity)),
      below: below[i]!.map((child) => Int32Array.from(kept, (set) => at(child, set))),
    };
  };
  const rows = ids.map((_, i) => (has(held, i) ? undefined : { stays: rowsOf(i, true), goes: rowsOf(i, false) }));

  return {
    order, below, at,
    roots: tree.roots.filter((i) => !has(held, i)),
    tables: (toll) => {
      const tables: Float64Array[] = [];
      for (const i of [...order].reverse()) {
        const { stays, goes } = rows[i]!;
        tables[i] = Float64Array.from(stays.cost, (staying, row) => {
          let [kept, gone] = [staying, goes.cost[row]! + toll[i]!];
          below[i]!.forEach((child, k) => {
            kept += tables[child]![stays.below[k]![row]!]!;
            gone += tables[child]![goes.below[k]![row]!]!;
          });
          return Math.min(kept, gone);
        });
      }
      return tables;
    },
  };
};

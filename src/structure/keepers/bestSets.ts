import { bit, has, membersOf } from './bits.js';
import { costBeside } from './costBeside.js';
import { leastCosts } from './leastCosts.js';
import { sureToGo } from './sureToGo.js';
import type { Weighing } from './weighing.js';

export interface WeighedSet {
  /** Bits of what is kept. */
  readonly kept: number;
  readonly cost: number;
}

export interface Search {
  /** Best first: all that cost no more than `within` above the best, but no more than `most`. */
  readonly sets: readonly WeighedSet[];
  /** Partial sets that were looked at. */
  readonly looked: number;
  /** Whether nothing was left unlooked at that could be better. */
  readonly complete: boolean;
}

/** More choices than this do not fit the bits of a number. */
export const mostChoices = 30;

/** Partial sets that are looked at before the search gives up, and says so. Trees with more than a score of branches at one level come near it, others hardly to a tenth. */
const mostLooked = 100_000;

/** Costs closer than this are the same but for rounding. */
const noise = 1e-9;

/** What a set costs, added up in the order of the choices, so that it is the same however it was found. */
export const costOf = ({ keep, remove, cut, pair, parent, whole }: Weighing, kept: number): number => {
  let cost = whole(kept);
  for (let i = 0; i < keep.length; i++) {
    if (has(kept, i)) {
      cost += keep[i]!;
      for (let j = 0; j < i; j++) if (has(kept, j)) cost += pair[i]![j]!;
    } else cost += remove[i]! + (parent[i] === undefined || has(kept, parent[i]!) ? cut[i]! : 0);
  }
  return Math.round(cost / noise) * noise;
};

/** The better first: by cost, then the one that takes less away, then by ids. */
const before = ({ ids }: Weighing, a: WeighedSet, b: WeighedSet): number => {
  if (a.cost !== b.cost) return a.cost - b.cost;
  const [inA, inB] = [membersOf(ids, a.kept), membersOf(ids, b.kept)];
  return inB.length - inA.length || (inA.join('\n') < inB.join('\n') ? -1 : 1);
};

/** A fair set to begin with: from all kept, the change of one choice, or of two, that gains most, until none gains. */
const fairSet = (weighing: Weighing): WeighedSet | undefined => {
  const { ids, parent, lockedKept, lockedGone, bears } = weighing;
  const all = bit(ids.length) - 1;
  const withoutOrphans = (set: number): number => {
    let kept = set;
    for (let again = true; again;) {
      again = false;
      parent.forEach((from, i) => { if (from !== undefined && has(kept, i) && !has(kept, from)) [kept, again] = [kept - bit(i), true]; });
    }
    return kept;
  };
  const may = (kept: number): boolean => (kept & lockedKept) === lockedKept && (kept & lockedGone) === 0 && bears(all - kept);
  let now = withoutOrphans(all - lockedGone);
  if (!may(now)) return undefined;
  let cost = costOf(weighing, now);
  for (;;) {
    let [best, least] = [now, cost];
    for (let i = 0; i < ids.length; i++) {
      for (let j = i; j < ids.length; j++) {
        const next = withoutOrphans((now ^ bit(i) ^ (j === i ? 0 : bit(j))) & ~lockedGone);
        const its = costOf(weighing, next);
        if (its < least - noise && may(next)) [best, least] = [next, its];
      }
    }
    if (best === now) return { kept: now, cost };
    [now, cost] = [best, least];
  }
};

/**
 * The cheapest sets, exactly: depth first, cut off where what is decided and the least that the rest can cost come to more than what was found.
 *
 * Land & Doig 1960, Econometrica 28:497, from memory. The bound knows the least that the rest costs choice by choice and side by side (`leastCosts`),
 * and that once more with a price on what is scarce, as Lagrange's multipliers set it (Held & Karp 1971, Math. Programming 1:6, from memory).
 *
 * @param within how much above the best a set may cost and still be told
 * @param most how many sets are told
 * @param atMost sets that cost more are of no interest, such as those worse than what another search found
 */
export const bestSets = (weighing: Weighing, within: number, most: number, atMost = Infinity): Search => {
  const { ids, lockedKept, lockedGone, wholeAtLeast, bears, budgets } = weighing;
  const all = bit(ids.length) - 1;
  const fair = fairSet(weighing);
  const found: WeighedSet[] = fair === undefined || fair.cost > atMost + noise ? [] : [fair];
  let looked = 0;
  let complete = true;
  const worst = (): number => Math.min(atMost, (found[0]?.cost ?? Infinity) + within, found.length < most ? Infinity : found.at(-1)!.cost) + noise;

  const least = leastCosts(weighing);
  const { order, below, roots, at } = least;
  /* The prices that tell most before anything is decided. */
  const tollOf = (price: readonly number[]): readonly number[] => ids.map((_, i) => budgets.reduce((sum, { each }, k) => sum + price[k]! * each[i]!, 0));
  const tollFree = (price: readonly number[]): number => budgets.reduce((sum, { whole }, k) => sum + price[k]! * whole, 0);
  const inAll = (tables: readonly Float64Array[]): number => roots.reduce((sum, root) => sum + tables[root]![0]!, 0);
  const tollHeld = (toll: readonly number[]): number => toll.reduce((sum, each, i) => (has(lockedGone, i) ? sum + each : sum), 0);
  const boundBy = (price: readonly number[]): number => inAll(least.tables(tollOf(price))) + tollHeld(tollOf(price)) - tollFree(price);
  let price: readonly number[] = budgets.map(() => 0);
  let bound = boundBy(price);
  for (let round = 0; round < 2; round++) {
    budgets.forEach((_, k) => {
      for (let step = 0.25; step <= 64; step *= Math.SQRT2) {
        const tried = price.map((each, other) => (other === k ? step : each));
        const tells = boundBy(tried);
        if (tells > bound) [price, bound] = [tried, tells];
      }
    });
  }
  const toll = tollOf(price);
  const [free, priced] = [least.tables(ids.map(() => 0)), least.tables(toll)];

  const add = (kept: number): void => {
    const set = { kept, cost: costOf(weighing, kept) };
    if (set.cost > worst() || found.some((other) => other.kept === kept)) return;
    found.push(set);
    found.sort((a, b) => before(weighing, a, b));
    while (found.length > most || found.at(-1)!.cost > found[0]!.cost + within + noise) found.pop();
  };

  /** What is decided: what it costs, what the rest costs at least, and both once more with the price on what is scarce. */
  interface Decided {
    readonly kept: number;
    readonly gone: number;
    readonly cost: number;
    readonly rest: number;
    readonly paid: number;
    readonly pricedRest: number;
  }
  const boundOf = ({ cost, rest, paid, pricedRest }: Decided): number => cost + Math.max(rest, paid + pricedRest);
  const decide = (from: Decided, i: number, stays: boolean): Decided | undefined => {
    const [kept, gone] = stays ? [from.kept + bit(i), from.gone] : [from.kept, from.gone + bit(i)];
    const own = costBeside(weighing, i, kept, from.kept + from.gone);
    if (own === Infinity || !bears(sureToGo(weighing, gone, kept))) return undefined;
    const row = at(i, from.kept);
    let [rest, pricedRest] = [from.rest - free[i]![row]!, from.pricedRest - priced[i]![row]!];
    for (const child of below[i]!) {
      const its = at(child, kept);
      rest += free[child]![its]!;
      pricedRest += priced[child]![its]!;
    }
    return { kept, gone, cost: from.cost + own, rest, paid: from.paid + (stays ? 0 : toll[i]!), pricedRest };
  };
  const visit = (place: number, now: Decided): void => {
    if (looked === mostLooked) {
      complete = false;
      return;
    }
    looked++;
    const reach = boundOf(now);
    if (reach > worst() || reach + wholeAtLeast(now.kept, all - now.kept - now.gone) > worst()) return;
    if (place === order.length) {
      add(now.kept);
      return;
    }
    const i = order[place]!;
    const ways = [decide(now, i, true), decide(now, i, false)].filter((way) => way !== undefined);
    for (const way of ways.sort((a, b) => boundOf(a) - boundOf(b))) visit(place + 1, way);
  };
  const heldCost = ids.reduce((sum, _, i) => (has(lockedKept + lockedGone, i) ? sum + costBeside(weighing, i, lockedKept, (lockedKept + lockedGone) & (bit(i) - 1)) : sum), 0);
  const start: Decided = { kept: lockedKept, gone: lockedGone, cost: heldCost, rest: inAll(free), paid: tollHeld(toll) - tollFree(price), pricedRest: inAll(priced) };
  if (start.cost < Infinity && bears(sureToGo(weighing, lockedGone, lockedKept))) visit(0, start);
  return { sets: found, looked, complete };
};

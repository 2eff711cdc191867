import { bit, has, membersOf } from './bits.js';

/** What all that is gone may come to together. */
export interface Budget {
  /** At least so much of it is used where a choice is gone. */
  readonly each: readonly number[];
  readonly whole: number;
}

/** What keeping and taking away would cost, as numbers: choices by index, sets of them as bits. */
export interface Weighing {
  readonly ids: readonly string[];
  /** Kept whatever it costs. */
  readonly lockedKept: number;
  /** Taken away whatever it costs. */
  readonly lockedGone: number;
  /** What a choice grows from, where that is a choice too: gone with it. */
  readonly parent: readonly (number | undefined)[];
  readonly keep: readonly number[];
  readonly remove: readonly number[];
  /** Added where it is cut on its own, not gone with its parent. */
  readonly cut: readonly number[];
  /** Cost of keeping both. */
  readonly pair: readonly (readonly number[])[];
  /** Cost of what is kept, taken together. */
  readonly whole: (kept: number) => number;
  /** A bound from below of `whole`, where some are kept and some are still open. */
  readonly wholeAtLeast: (kept: number, open: number) => number;
  /** Whether so many may be gone. What it forbids it forbids with more gone too. */
  readonly bears: (gone: number) => boolean;
  /** Whether exactly so many may be gone, once all is decided. */
  readonly bearsInAll: (gone: number) => boolean;
  /** Of what `bears` forbids that which adds up: it sharpens the bound. */
  readonly budgets: readonly Budget[];
}

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

/** Partial sets that are looked at before the search gives up, and says so: about a second. Only a tree with far more wood to lose than its limits bear comes near it. */
const mostLooked = 300_000;

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
  const { ids, parent, lockedKept, lockedGone, bears, bearsInAll } = weighing;
  const all = bit(ids.length) - 1;
  const withoutOrphans = (set: number): number => {
    let kept = set;
    for (let again = true; again;) {
      again = false;
      parent.forEach((from, i) => { if (from !== undefined && has(kept, i) && !has(kept, from)) [kept, again] = [kept - bit(i), true]; });
    }
    return kept;
  };
  const may = (kept: number): boolean => (kept & lockedKept) === lockedKept && (kept & lockedGone) === 0 && bears(all - kept) && bearsInAll(all - kept);
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
 * Land & Doig 1960, Econometrica 28:497, from memory. The bound counts what each open choice costs at least, and what those that stand against each other cost besides;
 * and all once more with a price on what is scarce, as Lagrange's multipliers set it (Held & Karp 1971, Math. Programming 1:6, from memory).
 *
 * @param within how much above the best a set may cost and still be told
 * @param most how many sets are told
 * @param atMost sets that cost more are of no interest, such as those worse than what another search found
 */
export const bestSets = (weighing: Weighing, within: number, most: number, atMost = Infinity): Search => {
  const { ids, keep, remove, cut, pair, parent, lockedKept, lockedGone, wholeAtLeast, bears, bearsInAll, budgets } = weighing;
  const n = ids.length;
  const fair = fairSet(weighing);
  const found: WeighedSet[] = fair === undefined || fair.cost > atMost + noise ? [] : [fair];
  let looked = 0;
  let complete = true;
  const worst = (): number => Math.min(atMost, (found[0]?.cost ?? Infinity) + within, found.length < most ? Infinity : found.at(-1)!.cost) + noise;

  /* Parents before what grows from them; among those the ones that matter most first. */
  const depth = (i: number): number => (parent[i] === undefined ? 0 : 1 + depth(parent[i]!));
  const stake = (i: number): number => keep[i]! + remove[i]! + cut[i]! + pair[i]!.reduce((sum, cost) => sum + cost, 0);
  const order = ids.map((_, i) => i).sort((a, b) => depth(a) - depth(b) || stake(b) - stake(a) || (ids[a]! < ids[b]! ? -1 : 1));
  const place = ids.map((_, i) => order.indexOf(i));
  const rivalsBefore = order.map((i, k) => order.slice(0, k).filter((j) => pair[i]![j]! > 0));

  /* What keeping each would cost beside what is kept already. */
  const beside = new Float64Array(n);
  const slack = new Float64Array(n);
  const keptAtLeast = (i: number): number => (has(lockedGone, i) ? Infinity : keep[i]! + beside[i]!);
  const goneAtLeast = (price: readonly number[]): Float64Array =>
    Float64Array.from(ids, (_, i) => (has(lockedKept, i) ? Infinity : remove[i]! + (parent[i] === undefined ? cut[i]! : 0) + budgets.reduce((sum, { each }, k) => sum + price[k]! * each[i]!, 0)));
  /* Of i and j kept side by side one pays for going, or both for their pair: so much of what going costs beyond staying is sure, once for each choice. */
  const restAtLeast = (at: number, gone: Float64Array): number => {
    let sum = 0;
    for (let k = at; k < n; k++) {
      const i = order[k]!;
      const keepI = keptAtLeast(i);
      slack[i] = Math.max(0, gone[i]! - keepI);
      sum += Math.min(gone[i]!, keepI);
      for (const j of rivalsBefore[k]!) {
        if (slack[i] === 0) break;
        if (place[j]! < at) continue;
        const sure = Math.min(slack[i]!, slack[j]!, pair[i]![j]!);
        slack[i]! -= sure;
        slack[j]! -= sure;
        sum += sure;
      }
    }
    return sum;
  };

  /* The prices that tell most before anything is decided. */
  const free = goneAtLeast(budgets.map(() => 0));
  const boundBy = (price: readonly number[]): number => restAtLeast(0, goneAtLeast(price)) - budgets.reduce((sum, { whole }, k) => sum + price[k]! * whole, 0);
  let price: readonly number[] = budgets.map(() => 0);
  for (let round = 0; round < 2; round++) {
    budgets.forEach((_, k) => {
      for (let step = 0.25; step <= 64; step *= Math.SQRT2) {
        const tried = price.map((each, other) => (other === k ? step : each));
        if (boundBy(tried) > boundBy(price)) price = tried;
      }
    });
  }
  const priced = goneAtLeast(price);
  const isPriced = price.some((each) => each > 0);
  const used = (gone: number): number => budgets.reduce((sum, { each, whole }, k) => sum + price[k]! * (each.reduce((all, share, i) => (has(gone, i) ? all + share : all), 0) - whole), 0);

  const add = (kept: number): void => {
    const set = { kept, cost: costOf(weighing, kept) };
    if (set.cost > worst() || found.some((other) => other.kept === kept) || !bearsInAll(bit(n) - 1 - kept)) return;
    found.push(set);
    found.sort((a, b) => before(weighing, a, b));
    while (found.length > most || found.at(-1)!.cost > found[0]!.cost + within + noise) found.pop();
  };

  const visit = (at: number, kept: number, gone: number, cost: number): void => {
    if (looked === mostLooked) {
      complete = false;
      return;
    }
    looked++;
    if (at === n) {
      add(kept);
      return;
    }
    const limit = worst() - cost;
    const rest = restAtLeast(at, free);
    if (rest > limit) return;
    const whole = wholeAtLeast(kept, bit(n) - 1 - kept - gone);
    if (whole + rest > limit || (isPriced && whole + restAtLeast(at, priced) + used(gone) > limit)) return;
    const i = order[at]!;
    const withParent = parent[i] !== undefined && has(gone, parent[i]);
    const goes = (): void => {
      if (has(lockedKept, i) || !bears(gone + bit(i))) return;
      visit(at + 1, kept, gone + bit(i), cost + remove[i]! + (withParent ? 0 : cut[i]!));
    };
    const stays = (): void => {
      if (has(lockedGone, i) || withParent) return;
      const own = keep[i]! + beside[i]!;
      for (let j = 0; j < n; j++) beside[j]! += pair[i]![j]!;
      visit(at + 1, kept + bit(i), gone, cost + own);
      for (let j = 0; j < n; j++) beside[j]! -= pair[i]![j]!;
    };
    if (keep[i]! + beside[i]! <= remove[i]! + cut[i]!) {
      stays();
      goes();
    } else {
      goes();
      stays();
    }
  };
  visit(0, 0, 0, 0);
  return { sets: found, looked, complete };
};

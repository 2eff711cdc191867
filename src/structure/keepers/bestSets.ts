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
}

export interface WeighedSet {
  /** Bits of what is kept. */
  readonly kept: number;
  readonly cost: number;
}

/** More choices than this do not fit the bits of a number. */
export const mostChoices = 30;

const bit = (i: number): number => 2 ** i;
const has = (set: number, i: number): boolean => ((set >>> i) & 1) === 1;

/** A cost without the noise of adding up in another order. */
const rounded = (cost: number): number => Math.round(cost * 1e9) / 1e9;

/** What a set costs, added up in the order of the choices, so that it is the same however it was found. */
export const costOf = ({ keep, remove, cut, pair, parent, whole }: Weighing, kept: number): number => {
  let cost = whole(kept);
  for (let i = 0; i < keep.length; i++) {
    if (has(kept, i)) {
      cost += keep[i]!;
      for (let j = 0; j < i; j++) if (has(kept, j)) cost += pair[i]![j]!;
    } else cost += remove[i]! + (parent[i] === undefined || has(kept, parent[i]!) ? cut[i]! : 0);
  }
  return rounded(cost);
};

/** The better first: by cost, then the one that takes less away, then by ids. */
const before = (weighing: Weighing, a: WeighedSet, b: WeighedSet): number => {
  if (a.cost !== b.cost) return a.cost - b.cost;
  const [inA, inB] = [a, b].map(({ kept }) => weighing.ids.filter((_, i) => has(kept, i)));
  return inB!.length - inA!.length || (inA!.join('\n') < inB!.join('\n') ? -1 : 1);
};

export interface Search {
  /** Best first: all that cost no more than `within` above the best, but no more than `most`. */
  readonly sets: readonly WeighedSet[];
  /** Partial sets that were looked at. */
  readonly looked: number;
}

/**
 * The cheapest sets, exactly: depth first, cut off where what is decided and the least that the rest can cost come to more than what was found.
 *
 * Land & Doig 1960, Econometrica 28:497, from memory. The bound counts each open choice once: in a pair with another that it stands against, or alone.
 * @param within how much above the best a set may cost and still be told
 * @param most how many sets are told
 * @param atMost sets that cost more are of no interest, such as those worse than what another search found
 */
export const bestSets = (weighing: Weighing, within: number, most: number, atMost = Infinity): Search => {
  const { ids, keep, remove, cut, pair, parent, lockedKept, lockedGone, whole, wholeAtLeast, bears } = weighing;
  const n = ids.length;
  const found: WeighedSet[] = [];
  let looked = 0;
  const worst = (): number => Math.min(atMost, (found[0]?.cost ?? Infinity) + within, found.length < most ? Infinity : found.at(-1)!.cost) + 1e-9;

  /* Parents before what grows from them; among those the ones that matter most first. */
  const depth = (i: number): number => (parent[i] === undefined ? 0 : 1 + depth(parent[i]!));
  const stake = (i: number): number => keep[i]! + remove[i]! + cut[i]! + pair[i]!.reduce((sum, cost) => sum + cost, 0);
  const order = ids.map((_, i) => i).sort((a, b) => depth(a) - depth(b) || stake(b) - stake(a) || (ids[a]! < ids[b]! ? -1 : 1));

  /* What keeping each would cost beside what is kept already. */
  const beside = new Float64Array(n);
  const taken = new Uint8Array(n);
  const rivals = order.map((i) => order.filter((j) => pair[i]![j]! > 0).sort((a, b) => pair[i]![b]! - pair[i]![a]!));
  const rivalsOf = new Map(order.map((i, at) => [i, rivals[at]!]));

  const leastOf = (i: number): number => Math.min(remove[i]!, keep[i]! + beside[i]!);
  const leastOfTwo = (i: number, j: number): number => {
    const [keepI, keepJ] = [keep[i]! + beside[i]!, keep[j]! + beside[j]!];
    return Math.min(remove[i]! + Math.min(remove[j]!, keepJ), keepI + Math.min(remove[j]!, keepJ + pair[i]![j]!));
  };
  const restAtLeast = (at: number, locked: number): number => {
    let sum = 0;
    taken.fill(0);
    for (let k = at; k < n; k++) {
      const i = order[k]!;
      if (taken[i] === 1) continue;
      taken[i] = 1;
      const alone = leastOf(i);
      let [best, gain] = [-1, 1e-12];
      for (const j of rivalsOf.get(i)!) {
        if (taken[j] === 1 || has(locked, j)) continue;
        const more = leastOfTwo(i, j) - alone - leastOf(j);
        if (more > gain) [best, gain] = [j, more];
      }
      sum += alone;
      if (best >= 0) {
        taken[best] = 1;
        sum += gain + leastOf(best);
      }
    }
    return sum;
  };

  const add = (kept: number): void => {
    const set = { kept, cost: costOf(weighing, kept) };
    if (set.cost > worst()) return;
    found.push(set);
    found.sort((a, b) => before(weighing, a, b));
    while (found.length > most || found.at(-1)!.cost > found[0]!.cost + within + 1e-9) found.pop();
  };

  const visit = (at: number, kept: number, gone: number, cost: number): void => {
    looked++;
    if (at === n) {
      add(kept);
      return;
    }
    const open = bit(n) - 1 - kept - gone;
    if (cost + wholeAtLeast(kept, open) + restAtLeast(at, kept + gone) > worst()) return;
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
  return { sets: found, looked };
};

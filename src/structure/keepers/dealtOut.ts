import { bit } from './bits.js';

/** Sittings as they stand: in the order of time, each the bits of what it takes. */
type Sets = readonly number[];

/** What sittings bear. */
export interface Dealing {
  readonly sittings: number;
  /** Whether a sitting bears one more. Once it refuses one it has to go on refusing it, whatever else it takes. */
  readonly bears: (set: number, i: number) => boolean;
  /** How full a sitting is: the emptiest is tried first. */
  readonly fullness: (set: number) => number;
  /** Of each place those that are most likely to be in its way, as bits. */
  readonly beside: readonly number[];
}

const none = (sittings: number): Sets => Array.from({ length: sittings }, () => 0);

const withOneMore = (sets: Sets, sitting: number, i: number): Sets => sets.map((set, each) => (each === sitting ? set + bit(i) : set));

/** The sittings that bear one more, the emptiest first. */
const waysOf = (i: number, sets: Sets, { bears, fullness }: Dealing): readonly number[] =>
  sets.flatMap((set, sitting) => (bears(set, i) ? [sitting] : [])).sort((a, b) => fullness(sets[a]!) - fullness(sets[b]!));

const count = (set: number): number => {
  let members = 0;
  for (let left = set; left !== 0; left &= left - 1) members++;
  return members;
};

/** Whether the rest can go beside what is dealt out: the one first that the fewest sittings bear, and of those the one with most in its way. */
const canGoBeside = (rest: number, sets: Sets, dealing: Dealing): boolean => {
  if (rest === 0) return true;
  let next = -1;
  let [ways, beside]: [readonly number[], number] = [[], 0];
  for (let left = rest; left !== 0; left &= left - 1) {
    const i = 31 - Math.clz32(left & -left);
    const its = waysOf(i, sets, dealing);
    if (its.length === 0) return false;
    const inItsWay = count(rest & dealing.beside[i]!);
    if (next < 0 || its.length < ways.length || (its.length === ways.length && inItsWay > beside)) [next, ways, beside] = [i, its, inItsWay];
  }
  return ways.some((sitting) => canGoBeside(rest & ~bit(next), withOneMore(sets, sitting, next), dealing));
};

/** Whether places, the biggest first, can be dealt out: each to the emptiest sitting that bears it, and if that fails in any way that there is. */
export const canBeDealt = (places: readonly number[], dealing: Dealing): boolean => {
  let sets = none(dealing.sittings);
  for (const i of places) {
    const [sitting] = waysOf(i, sets, dealing);
    if (sitting === undefined) return canGoBeside(places.reduce((set, each) => set + bit(each), 0), none(dealing.sittings), dealing);
    sets = withOneMore(sets, sitting, i);
  }
  return true;
};

/** Places dealt out: each in turn to the first sitting that bears it and leaves a sitting for all that come after it; undefined where that cannot be. */
export const dealtOut = (places: readonly number[], dealing: Dealing): readonly number[] | undefined => {
  let sets = none(dealing.sittings);
  let rest = places.reduce((set, i) => set + bit(i), 0);
  for (const i of places) {
    rest &= ~bit(i);
    const sitting = sets.findIndex((set, each) => dealing.bears(set, i) && canGoBeside(rest, withOneMore(sets, each, i), dealing));
    if (sitting < 0) return undefined;
    sets = withOneMore(sets, sitting, i);
  }
  return sets.filter((set) => set !== 0);
};

import type { Branch } from '../tree.js';
import { type Charge, chargesOfCut, chargesOfFew, chargesOfFirst, chargesOfFoliage, chargesOfHeight, chargesOfKept, chargesOfMany, chargesOfPair, chargesOfSides, chargesOfTrunks } from './charges.js';
import type { Weighing } from './weighing.js';
import { bit, has } from './bits.js';
import type { Frame } from './frame.js';
import { remembered } from './remembered.js';
import { bearingOf, type Limits } from './sittings.js';

/** One thing to keep or take away: a branch, or a trunk beside the main one as the branch that it is of that. */
export interface Choice {
  readonly branch: Branch;
  /** What it grows from, where that is a choice too. */
  readonly parent?: string;
  /** Share of the foliage that is its own, without that of the choices that grow from it. */
  readonly ownShare: number;
  readonly isTrunk: boolean;
  /** Kept or taken away whatever it costs. */
  readonly locked?: 'kept' | 'gone';
  /** It leads on: kept, and charged for nothing. */
  readonly leads?: boolean;
  /** It goes with a top that is cut off: no cut of its own. */
  readonly withTop?: boolean;
}

/** The choices of a tree under an aim, weighed: as numbers to search in, and as charges to tell. */
export interface Weighed {
  readonly weighing: Weighing;
  readonly chargesOf: (kept: number) => readonly Charge[];
  /** What keeping one more would be charged for, of that one. */
  readonly chargesOfOneMore: (kept: number, i: number) => readonly Charge[];
  /** What is cut, sitting by sitting, where all but these are kept. */
  readonly sittingsOf: (kept: number) => readonly number[];
}

const sumOf = (charges: readonly Charge[]): number => charges.reduce((sum, { cost }) => sum + cost, 0);

/**
 * Weighs the choices.
 *
 * @param forbidden sets of ids that may not all be gone, as the rules found out
 */
export const weigh = (frame: Frame, choices: readonly Choice[], limits: Limits, years: number, forbidden: readonly (readonly string[])[] = []): Weighed => {
  const ids = choices.map(({ branch }) => branch.id);
  const bearing = bearingOf(frame.structure, limits, choices.map(({ branch }) => branch));
  const at = new Map(ids.map((id, i) => [id, i]));
  const parent = choices.map((choice) => (choice.parent === undefined ? undefined : at.get(choice.parent)));
  const bits = (of: (choice: Choice) => boolean): number => choices.reduce((set, choice, i) => set + (of(choice) ? bit(i) : 0), 0);
  const isBranch = ({ isTrunk, leads }: Choice): boolean => !isTrunk && leads !== true;

  const ofKept = choices.map((choice) => (isBranch(choice) ? chargesOfKept(frame, choice.branch) : []));
  const ofGone = choices.map(({ branch, ownShare }) => chargesOfFoliage(frame, branch, ownShare));
  const ofCut = choices.map(({ branch, withTop }) => (withTop === true || branch.dead ? [] : chargesOfCut(frame, branch)));
  const ofPair = choices.map((a, i) => choices.map((b, j) => (j < i && isBranch(a) && isBranch(b) ? chargesOfPair(frame, b.branch, a.branch) : [])));

  const branchesIn = (set: number): readonly Branch[] => choices.filter((choice, i) => has(set, i) && isBranch(choice)).map(({ branch }) => branch);
  const trunksIn = (set: number): number => 1 + choices.filter(({ isTrunk }, i) => isTrunk && has(set, i)).length;
  const { least, most } = frame.terms.trunks;
  const falling = remembered((set) => {
    const branches = branchesIn(set);
    return [...chargesOfSides(frame, branches), ...chargesOfHeight(frame, branches), ...chargesOfFew(frame, branches)];
  });
  const rising = remembered((set) => chargesOfMany(frame, branchesIn(set)));
  const ofWhole = (set: number): readonly Charge[] => [...falling(set), ...rising(set), ...chargesOfFirst(frame, branchesIn(set)), ...chargesOfTrunks(frame, trunksIn(set))];

  /* What goes on its own counts as a cut; what goes with a bigger one, or with the top, does not. */
  const ownCut = bits(({ withTop }) => withTop !== true);
  const grown = choices.flatMap((_, i) => (parent[i] === undefined ? [] : [i]));
  const cutsIn = (gone: number): number => grown.reduce((set, i) => (has(gone, i) && has(gone, parent[i]!) ? set & ~bit(i) : set), gone & ownCut);
  const never = forbidden.map((set) => bits(({ branch }) => set.includes(branch.id)));
  const all = bit(choices.length) - 1;

  return {
    weighing: {
      ids, parent,
      lockedKept: bits(({ locked }) => locked === 'kept'), lockedGone: bits(({ locked }) => locked === 'gone'),
      keep: ofKept.map(sumOf), remove: ofGone.map(sumOf), cut: ofCut.map(sumOf),
      pair: ofPair.map((row, i) => row.map((_, j) => sumOf(j < i ? row[j]! : ofPair[j]![i]!))),
      whole: (set) => sumOf(ofWhole(set)),
      wholeAtLeast: (set, open) => sumOf(falling(set + open)) + sumOf(rising(set)) + sumOf(chargesOfTrunks(frame, Math.max(trunksIn(set), Math.min(trunksIn(set + open), Math.max(least, Math.min(most, trunksIn(set))))))),
      bears: remembered((gone) => never.every((set) => (gone & set) !== set) && bearing.mayBeGone(cutsIn(gone), years)),
      contend: bearing.contend,
      budgets: bearing.budgets(years).map(({ each, whole }) => ({ each: each.map((share, i) => (parent[i] === undefined && has(ownCut, i) ? share : 0)), whole })),
    },
    chargesOfOneMore: (set, i) => [...ofKept[i]!, ...choices.flatMap((_, j) => (j !== i && has(set, j) ? (j < i ? ofPair[i]![j]! : ofPair[j]![i]!) : []))],
    sittingsOf: (set) => bearing.inSittings(cutsIn(all - set), years) ?? [],
    chargesOf: (set) => [
      ...choices.flatMap((_, i) => (has(set, i) ? [...ofKept[i]!, ...choices.flatMap((__, j) => (j < i && has(set, j) ? ofPair[i]![j]! : []))] : [...ofGone[i]!, ...(parent[i] !== undefined && has(all - set, parent[i]!) ? [] : ofCut[i]!)])),
      ...ofWhole(set),
    ],
  };
};

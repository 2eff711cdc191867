import { severity } from '../severity.js';
import type { Branch, Structure } from '../tree.js';
import { diameterAt } from '../trunkAt.js';
import { woundedGirthAt } from '../woundedGirth.js';
import type { Budget } from './bestSets.js';
import { bit, has, membersOf } from './bits.js';
import { remembered } from './remembered.js';

/** What the rules bear: shares that one sitting may take, and share of the girth that all sittings together may wound at one level. Absent where no rule sets one. */
export interface Limits {
  readonly foliageShare?: number;
  readonly sectionShare?: number;
  readonly girthShare?: number;
  readonly girthShareInAll?: number;
}

/** Whether branches may go in one sitting, or over some of them; sets are bits of the branches' places. */
export interface Bearing {
  /** What adds up over so many sittings, and how much of it they bear. */
  readonly budgets: (sittings: number) => readonly Budget[];
  /** Of each branch those at its level that no sitting bears beside it. */
  readonly contend: readonly number[];
  /** The branches sitting by sitting, the thickest as early as can be; undefined where so many sittings do not bear them. */
  readonly inSittings: (gone: number, sittings: number) => readonly number[] | undefined;
}

/** A figure on its limit is within it, whatever rounding makes of it. */
const within = (value: number, limit: number | undefined): boolean => limit === undefined || value <= limit + 1e-9;

const widthOf = ({ diameterMm, dead }: Branch): number => (dead ? 0 : (diameterMm?.value ?? 0));

/** What sittings bear that take branches of a tree. */
export const bearingOf = (structure: Structure, limits: Limits, branches: readonly Branch[]): Bearing => {
  const shares = branches.map(({ foliageShare, dead }) => (dead ? 0 : (foliageShare?.value ?? 0)));
  const baseMm = structure.baseMm?.value;
  const sections = branches.map((branch) => (baseMm === undefined ? 0 : severity([widthOf(branch)], baseMm)));
  const main = structure.trunks[0]!.id;
  const openWounds = structure.wounds.filter(({ closed }) => !closed);
  const trunkMm = branches.map((branch) => (branch.onTrunk && widthOf(branch) > 0 ? diameterAt(structure.trunks.find(({ id }) => id === branch.trunkId)!, branch.heightMm)?.value : undefined));

  /* A cut is looked at with those near enough to share its level, whichever of them go. */
  const levels = branches.map((branch, i) => {
    const here = trunkMm[i];
    if (here === undefined) return undefined;
    const near = (heightMm: number): boolean => Math.abs(heightMm - branch.heightMm) <= here;
    const mask = branches.reduce((set, other, j) => (trunkMm[j] !== undefined && other.trunkId === branch.trunkId && near(other.heightMm) ? set + bit(j) : set), 0);
    const old = branch.trunkId === main ? openWounds.filter(({ heightMm }) => near(heightMm)) : [];
    const girthOf = remembered((together) => {
      const cuts = membersOf(branches, together).map((cut) => ({ heightMm: cut.heightMm, widthMm: widthOf(cut), ...(cut.azimuthDeg === undefined ? {} : { azimuthDeg: cut.azimuthDeg }) }));
      return woundedGirthAt(branch.heightMm, here, [...cuts, ...old]).value;
    });
    return { mask, girthOf: (gone: number): number => girthOf(gone & mask) };
  });
  const girthBorne = (gone: number, limit: number | undefined): boolean => {
    for (let i = 0; i < branches.length; i++) if (has(gone, i) && levels[i] !== undefined && !within(levels[i]!.girthOf(gone), limit)) return false;
    return true;
  };
  const total = (of: readonly number[], gone: number): number => {
    let sum = 0;
    for (let i = 0; i < of.length; i++) if (has(gone, i)) sum += of[i]!;
    return sum;
  };
  const sums = [{ each: shares, limit: limits.foliageShare }, { each: sections, limit: limits.sectionShare }].flatMap(({ each, limit }) => (limit === undefined ? [] : [{ each, limit }]));
  const sumsBorne = (gone: number, sittings: number): boolean => sums.every(({ each, limit }) => within(total(each, gone), limit * sittings));
  const oneBears = remembered((gone) => sumsBorne(gone, 1) && girthBorne(gone, limits.girthShare));
  const thickestFirst = branches.map((_, i) => i).sort((a, b) => widthOf(branches[b]!) - widthOf(branches[a]!) || (branches[a]!.id < branches[b]!.id ? -1 : 1));

  /* The thickest first, each in the first sitting that bears it; where that leaves one without any, in the next. */
  const spread = (places: readonly number[], sittings: number): readonly number[] | undefined => {
    const taken: number[] = [];
    const put = (next: number): boolean => {
      if (next === places.length) return true;
      for (let later = next; taken.length === sittings && later < places.length; later++) if (!taken.some((sitting) => oneBears(sitting + bit(places[later]!)))) return false;
      const one = bit(places[next]!);
      for (let sitting = 0; sitting < taken.length; sitting++) {
        if (!oneBears(taken[sitting]! + one)) continue;
        taken[sitting]! += one;
        if (put(next + 1)) return true;
        taken[sitting]! -= one;
      }
      if (taken.length === sittings || !oneBears(one)) return false;
      taken.push(one);
      if (put(next + 1)) return true;
      taken.pop();
      return false;
    };
    return put(0) ? taken : undefined;
  };

  return {
    budgets: (sittings) => sums.map(({ each, limit }) => ({ each, whole: limit * sittings })),
    contend: branches.map((_, i) => branches.reduce((set, __, j) => (i !== j && levels[i] !== undefined && has(levels[i]!.mask, j) && girthBorne(bit(i), limits.girthShare) && girthBorne(bit(j), limits.girthShare) && !girthBorne(bit(i) + bit(j), limits.girthShare) ? set + bit(j) : set), 0)),
    inSittings: (gone, sittings) => (sumsBorne(gone, sittings) && girthBorne(gone, limits.girthShareInAll) ? spread(thickestFirst.filter((i) => has(gone, i)), sittings) : undefined),
  };
};

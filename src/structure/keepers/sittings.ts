import { severity } from '../severity.js';
import type { Branch, Structure } from '../tree.js';
import { diameterAt } from '../trunkAt.js';
import { woundedGirthAt } from '../woundedGirth.js';
import type { Budget } from './weighing.js';
import { bit, has, membersOf } from './bits.js';
import { canBeDealt, type Dealing, dealtOut } from './dealtOut.js';
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
  /** Whether so many sittings bear that these go. */
  readonly mayBeGone: (gone: number, sittings: number) => boolean;
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
  const girthBorne = (gone: number, limit: number | undefined, of = gone): boolean => {
    for (let i = 0; i < branches.length; i++) if (has(of, i) && levels[i] !== undefined && !within(levels[i]!.girthOf(gone), limit)) return false;
    return true;
  };
  /* Of each cut those at whose level it is: it may wound any of them too far. */
  const atLevelOf = branches.map((_, i) => levels.reduce((set, level, j) => (level !== undefined && has(level.mask, i) ? set + bit(j) : set), 0));
  const totalOf = (of: readonly number[]): ((gone: number) => number) => remembered((gone) => of.reduce((sum, each, i) => (has(gone, i) ? sum + each : sum), 0));
  const [foliageOf, sectionOf] = [totalOf(shares), totalOf(sections)];
  const { foliageShare = Infinity, sectionShare = Infinity } = limits;
  const thickestFirst = branches.map((_, i) => i).sort((a, b) => widthOf(branches[b]!) - widthOf(branches[a]!) || (branches[a]!.id < branches[b]!.id ? -1 : 1));
  const placesOf = (gone: number): readonly number[] => thickestFirst.filter((i) => has(gone, i));
  const dealing = (sittings: number): Dealing => ({
    sittings, fullness: sectionOf, beside: atLevelOf,
    bears: (set, i) => {
      const together = set + bit(i);
      return within(foliageOf(together), foliageShare) && within(sectionOf(together), sectionShare) && girthBorne(together, limits.girthShare, together & atLevelOf[i]!);
    },
  });
  /* Each sitting takes its share of the foliage that those before it have left, so that all together never take the last of it. */
  const foliageInAll = (sittings: number): number => (foliageShare < 1 ? 1 - (1 - foliageShare) ** sittings : Infinity);
  const inAllBorne = (gone: number, sittings: number): boolean => within(foliageOf(gone), foliageInAll(sittings)) && within(sectionOf(gone), sectionShare * sittings) && girthBorne(gone, limits.girthShareInAll);

  return {
    budgets: (sittings) => [{ each: shares, whole: foliageInAll(sittings) }, { each: sections, whole: sectionShare * sittings }].filter(({ whole }) => whole < Infinity),
    contend: branches.map((_, i) => branches.reduce((set, __, j) => (i !== j && levels[i] !== undefined && has(levels[i]!.mask, j) && girthBorne(bit(i), limits.girthShare) && girthBorne(bit(j), limits.girthShare) && !girthBorne(bit(i) + bit(j), limits.girthShare) ? set + bit(j) : set), 0)),
    mayBeGone: (gone, sittings) => inAllBorne(gone, sittings) && canBeDealt(placesOf(gone), dealing(sittings)),
    inSittings: (gone, sittings) => (inAllBorne(gone, sittings) ? dealtOut(placesOf(gone), dealing(sittings)) : undefined),
  };
};

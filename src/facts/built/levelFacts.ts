import { angleBetween } from '../../structure/azimuth.js';
import { branchFaults } from '../../structure/branchFaults.js';
import { knotOf } from '../../structure/knot.js';
import { areBars, levelCloseness } from '../../structure/levelCloseness.js';
import { levelOf, levelsOf } from '../../structure/levels.js';
import { largestEmptySector } from '../../structure/sides.js';
import { inverseTapers } from '../../structure/taper.js';
import type { Branch, Structure } from '../../structure/tree.js';
import { diameterAt } from '../../structure/trunkAt.js';
import { girthShareOf } from '../../structure/woundedGirth.js';
import type { Asked, Derive } from '../asked.js';
import { branchAsked, trunkAsked } from './branchAsked.js';
import { chopHeightMm } from './chop.js';
import { type FactValue, known } from '../factValue.js';
import { goneInSitting } from './goneInSitting.js';
import { measured } from './measured.js';

const fine = (value: number): number => Math.round(value * 1000) / 1000;

/** A fact of the branch that the work is on; nothing is worked out where the structure does not tell it. */
const ofBranch = (work: (branch: Branch, structure: Structure, asked: Asked) => FactValue | undefined): Derive => (_, asked) => {
  const branch = branchAsked(asked);
  return branch === undefined || !branch.onTrunk ? undefined : work(branch, asked.built!.structure, asked);
};

const living = ({ branches }: Structure): readonly Branch[] => branches.filter((branch) => branch.onTrunk && !branch.dead);

/** Living branches on the trunks that still stand after this sitting. */
const standing = (structure: Structure, asked: Asked): readonly Branch[] => {
  const gone = goneInSitting(asked);
  return living(structure).filter(({ id }) => !gone.has(id));
};

/** The height that the tree is meant to have, or has. */
const aimedHeightMm = (structure: Structure, { proposal }: Asked): number | undefined => Math.max(proposal.tree.aim?.heightMm ?? 0, structure.heightMm?.value ?? 0) || undefined;

const aimedSize = ({ proposal: { tree: { aim } } }: Asked): { readonly trunkDiameterMm?: number; readonly heightMm?: number } => ({
  ...(aim?.trunkDiameterMm === undefined ? {} : { trunkDiameterMm: aim.trunkDiameterMm }),
  ...(aim?.heightMm === undefined ? {} : { heightMm: aim.heightMm }),
});

/** Branches that are meant to stay: a sacrifice branch makes no first branch. */
const lowestMm = (branches: readonly Branch[]): number | undefined => branches.find((branch) => branch.role !== 'sacrifice')?.heightMm;

/** How high the lowest branch stands once this cut is made, as a share; none where the cut leaves it as it is. */
const baredTo = (branch: Branch, structure: Structure, asked: Asked, wholeMm: number | undefined): number | undefined => {
  if (wholeMm === undefined) return undefined;
  const after = standing(structure, asked);
  const [standsYet, without] = [lowestMm(living(structure).filter((each) => each === branch || after.includes(each))), lowestMm(after)];
  return standsYet === undefined || standsYet === without ? 0 : Math.min(1, (without ?? wholeMm) / wholeMm);
};

/** Where the cut is made, counted from the trunk, and the node behind it: of the buds that were told and how many of them are left. */
const behindCut = (asked: Asked, left: number | undefined): { readonly cutMm: number; readonly nextMm: number } | undefined => {
  const buds = branchAsked(asked)?.budsAtMm ?? [];
  return left === undefined || left < 1 || left > buds.length ? undefined : { cutMm: buds[left - 1]!, nextMm: buds[left - 2] ?? 0 };
};

/** Facts of the tree as it is built: levels, sides, heights, faults. */
export const levelFacts: Readonly<Record<string, Derive>> = {
  'tree.trunkDiameterMm': (_, { built }) => (built!.structure.baseMm === undefined ? undefined : measured(built!.structure.baseMm)),
  'cut.heightMm': (_, asked) => {
    const heightMm = asked.operation.id === 'trunk-chop' ? chopHeightMm(asked) : branchAsked(asked)?.heightMm;
    return heightMm === undefined ? undefined : known(heightMm, 'worked-out');
  },
  'structure.role': (_, asked) => known(branchAsked(asked)?.role ?? 'undecided', 'given'),
  'structure.isTrunk': (_, asked) => known(trunkAsked(asked) !== undefined, 'given'),
  'structure.faults': (_, asked) => {
    const branch = branchAsked(asked);
    return known(branch === undefined ? [] : branchFaults(branch, asked.built!.structure), 'worked-out');
  },
  'structure.levelMembersNow': ofBranch((branch, structure) => known(levelOf(structure, branch).filter(({ dead }) => !dead).length, 'worked-out')),
  'structure.levelMembers': (_, asked) => {
    const { structure } = asked.built!;
    if (structure.branches.length === 0) return undefined;
    const branch = branchAsked(asked);
    const stays = new Set(standing(structure, asked));
    const levels = branch === undefined || !branch.onTrunk || !structure.branches.includes(branch) ? levelsOf(structure) : [levelOf(structure, branch)];
    return known(Math.max(0, ...levels.map((level) => level.filter((each) => stays.has(each)).length)), 'worked-out');
  },
  'structure.collarShare': ofBranch((branch, structure, asked) => {
    const trunkMm = diameterAt(structure.trunks.find(({ id }) => id === branch.trunkId)!, branch.heightMm);
    if (trunkMm === undefined || trunkMm.value === 0) return undefined;
    const stays = new Set(standing(structure, asked));
    const sizes = levelOf(structure, branch).filter((each) => stays.has(each)).map(({ diameterMm }) => diameterMm);
    if (sizes.includes(undefined)) return undefined;
    const share = (of: 'value' | 'atLeast' | 'atMost', trunk: number): number => Math.min(5, knotOf(sizes.map((size) => size![of]), trunk).collarShare);
    return measured({ value: share('value', trunkMm.value), atLeast: share('atLeast', trunkMm.atMost), atMost: share('atMost', Math.max(trunkMm.atLeast, 0.1)), certainty: trunkMm.certainty });
  }),
  /** Counted at the thickness and height that are aimed at: what is clear today may read as one level then. */
  'structure.levelMates': ofBranch((branch, structure, asked) => {
    const apart = standing(structure, asked).filter((other) => other !== branch).map((other) => levelCloseness(structure, branch, other, aimedSize(asked)));
    return apart.includes(undefined) && structure.trunks.length === 1 ? undefined : known(apart.filter((each) => each !== undefined && each < 1).length, 'worked-out');
  }),
  'structure.bars': ofBranch((branch, structure, asked) => {
    const bars = standing(structure, asked).filter((other) => other !== branch && other.trunkId === branch.trunkId).map((other) => areBars(structure, branch, other, aimedSize(asked)));
    return bars.includes(true) || !bars.includes(undefined) ? known(bars.filter((each) => each === true).length, 'worked-out') : undefined;
  }),
  'structure.aspectRatio': ofBranch(({ aspectRatio }) => (aspectRatio === undefined ? undefined : measured({ ...aspectRatio, value: Math.min(2, aspectRatio.value) }))),
  'structure.heightShare': ofBranch((branch, structure, asked) => {
    const whole = aimedHeightMm(structure, asked);
    return whole === undefined ? undefined : known(fine(Math.min(1, branch.heightMm / whole)), 'worked-out');
  }),
  'structure.baredShare': ofBranch((branch, structure, asked) => {
    const bared = baredTo(branch, structure, asked, aimedHeightMm(structure, asked));
    return bared === undefined ? undefined : known(fine(bared), 'worked-out');
  }),
  'structure.liveCrownLeft': ofBranch((branch, structure, asked) => {
    const bared = baredTo(branch, structure, asked, structure.heightMm?.value);
    return bared === undefined ? undefined : known(fine(bared === 0 ? 1 - (lowestMm(standing(structure, asked)) ?? 0) / structure.heightMm!.value : 1 - bared), 'worked-out');
  }),
  'structure.holeDeg': ofBranch((branch, structure, asked) => {
    if (branch.azimuthDeg === undefined) return undefined;
    const after = standing(structure, asked).filter((each) => each.trunkId === branch.trunkId);
    const sides = after.filter((each) => each !== branch).map(({ azimuthDeg }) => azimuthDeg);
    if (sides.includes(undefined) || sides.length < 2) return undefined;
    if (after.includes(branch)) return known(0, 'worked-out');
    const [now, then] = [largestEmptySector([...(sides as readonly number[]), branch.azimuthDeg])!.widthDeg, largestEmptySector(sides as readonly number[])!.widthDeg];
    return known(then > now ? Math.round(then) : 0, 'worked-out');
  }),
  'structure.lowFoliageLeft': ofBranch((_, structure, asked) => {
    const height = structure.heightMm?.value;
    const after = standing(structure, asked);
    const gone = living(structure).filter((branch) => !after.includes(branch));
    if (height === undefined || [...after, ...gone].some((branch) => branch.foliageShare === undefined)) return undefined;
    const sum = (branches: readonly Branch[]): number => branches.reduce((all, branch) => all + branch.foliageShare!.value, 0);
    const left = 1 - sum(gone);
    const share = left <= 0 ? 0 : Math.min(1, sum(after.filter((branch) => branch.heightMm <= (2 / 3) * height)) / left);
    return after.every((branch) => branch.foliageShare!.certainty === 'told') ? known(fine(share), 'worked-out') : { state: 'estimated', value: fine(share), among: { atLeast: 0, atMost: 1 }, from: 'estimated' };
  }),
  'structure.thickerAbove': ofBranch((branch, structure) => {
    const trunk = structure.trunks.find(({ id }) => id === branch.trunkId)!;
    const thicker = inverseTapers(structure, trunk);
    return thicker === undefined ? undefined : known(fine(Math.max(1, ...thicker.filter(({ heightMm }) => heightMm > branch.heightMm).map((each) => each.thicker))), 'worked-out');
  }),
  'structure.gapNearShare': (read, asked) => {
    const [branch, width] = [branchAsked(asked), read('cut.branchDiameterMm')];
    const { structure } = asked.built!;
    if (branch?.onTrunk !== true || width.value === undefined || asked.proposal.tree.structure?.wounds === undefined) return undefined;
    const trunkMm = diameterAt(structure.trunks.find(({ id }) => id === branch.trunkId)!, branch.heightMm)?.value;
    if (trunkMm === undefined || trunkMm === 0 || branch.trunkId !== structure.trunks[0]!.id) return undefined;
    const own = width.value as number;
    /* Along the bark; on a side that is not known it is taken to be near. */
    const near = structure.wounds.filter((wound) => {
      const around = branch.azimuthDeg === undefined || wound.azimuthDeg === undefined ? 0 : (angleBetween(branch.azimuthDeg, wound.azimuthDeg) / 360) * Math.PI * trunkMm;
      return !wound.closed && Math.hypot(around, wound.heightMm - branch.heightMm) - (own + wound.widthMm) / 2 <= 2 * own;
    });
    return known(fine(Math.min(1, near.reduce((sum, wound) => sum + girthShareOf(wound.widthMm, trunkMm), 0))), 'worked-out');
  },
  'cut.secondNodeMm': (read, asked) => {
    const behind = behindCut(asked, read('cut.nodesLeft').state === 'known' ? (read('cut.nodesLeft').value as number) : undefined);
    return behind === undefined ? undefined : known(fine(behind.cutMm - behind.nextMm), 'worked-out');
  },
  'cut.lostIfNodeFails': (read, asked) => {
    const behind = behindCut(asked, read('cut.nodesLeft').state === 'known' ? (read('cut.nodesLeft').value as number) : undefined);
    return behind === undefined || behind.cutMm === 0 ? undefined : known(fine((behind.cutMm - behind.nextMm) / behind.cutMm), 'worked-out');
  },
};

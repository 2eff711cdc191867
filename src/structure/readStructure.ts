import type { Proposal } from '../contract/types.generated.js';
import { SparebudError } from '../knowledge/error.js';
import { turned } from './azimuth.js';
import { impossible } from './impossible.js';
import { type Measure, over, told } from './measure.js';
import { toldIssues } from './toldIssues.js';
import type { Branch, Structure, ToldStructure, Trunk, TrunkPoint } from './tree.js';
import { diameterAt } from './trunkAt.js';
import { withFoliageShares } from './withFoliageShares.js';

type ToldTrunk = NonNullable<ToldStructure['trunks']>[number];
type ToldBranch = NonNullable<ToldStructure['branches']>[number];

/** A ratio that was judged by eye may be a fifth off (practice). */
const byEye = { atLeast: 0.8, atMost: 1.2 };

/** The tip of a trunk that a cone stands in for, as a share of its base. */
const tip = 0.1;

const straight = (heightMm: number, diameterMm: number): TrunkPoint => ({ heightMm, diameterMm, sideMm: 0, backMm: 0 });

/** A trunk of which no point was told: a cone over the tree's height, or a point where that is not known either. */
const standIn = (id: string, { diameterMm, heightMm }: NonNullable<Proposal['tree']['trunk']>): Trunk => {
  const base = diameterMm === undefined ? [] : [straight(0, diameterMm)];
  const top = diameterMm === undefined || heightMm === undefined ? [] : [straight(heightMm, diameterMm * tip)];
  return { id, points: [...base, ...top], pointsTold: false, lineTold: false };
};

const trunkOf = ({ id, from, atMm, points }: ToldTrunk): Trunk => ({
  id,
  ...(from === undefined ? {} : { from }),
  ...(atMm === undefined ? {} : { atMm }),
  points: points.map(({ heightMm, diameterMm, sideMm = 0, backMm = 0 }) => ({ heightMm, diameterMm, sideMm, backMm })).sort((a, b) => a.heightMm - b.heightMm),
  pointsTold: true,
  lineTold: points.some(({ sideMm, backMm }) => sideMm !== undefined || backMm !== undefined),
});

/** The trunks of a tree, the main one first: the first that leaves no other. One without points is stood in for by the tree's own diameter and height. */
const trunksOf = (written: readonly ToldTrunk[], mainId: string, trunk: NonNullable<Proposal['tree']['trunk']>): readonly Trunk[] => {
  const main = written.find(({ id }) => id === mainId);
  const first = main === undefined || main.points.length === 0 ? standIn(mainId, trunk) : trunkOf(main);
  return [first, ...written.filter((each) => each !== main).map(trunkOf)];
};

/** Where a branch joins the trunk that it, or what it grows from, grows from. */
const rootOf = (branch: ToldBranch, branches: ReadonlyMap<string, ToldBranch>, mainId: string): string => {
  let from = branch.from;
  while (from !== undefined && branches.has(from)) from = branches.get(from)!.from;
  return from ?? mainId;
};

interface Sized {
  readonly diameterMm?: Measure;
  readonly aspectRatio?: Measure;
}

/** Diameter and ratio of a branch, each of the other where what bears it is known. */
const sizeOf = ({ diameterMm, branchToTrunk }: ToldBranch, bearsMm: Measure | undefined): Sized => {
  if (diameterMm !== undefined) {
    const ratio = bearsMm === undefined ? undefined : over(told(diameterMm), bearsMm);
    return { diameterMm: told(diameterMm), ...(ratio === undefined ? {} : { aspectRatio: ratio }) };
  }
  if (branchToTrunk === undefined) return {};
  const aspectRatio: Measure = { value: branchToTrunk, atLeast: branchToTrunk * byEye.atLeast, atMost: branchToTrunk * byEye.atMost, certainty: 'told' };
  if (bearsMm === undefined) return { aspectRatio };
  return { aspectRatio, diameterMm: { value: branchToTrunk * bearsMm.value, atLeast: aspectRatio.atLeast * bearsMm.atLeast, atMost: aspectRatio.atMost * bearsMm.atMost, certainty: 'estimated' } };
};

const heightOf = (tree: number | undefined, trunks: readonly Trunk[], branches: readonly { readonly heightMm: number }[]): Measure | undefined => {
  if (tree !== undefined) return told(tree);
  const points = trunks.filter((trunk) => trunk.pointsTold).flatMap((trunk) => trunk.points.map((point) => point.heightMm));
  const highest = Math.max(0, ...points, ...branches.map((branch) => branch.heightMm));
  return points.length < 2 || highest === 0 ? undefined : { value: highest, atLeast: highest, atMost: highest * 1.5, certainty: 'estimated' };
};

/**
 * A structure as its owner told it, brought into one frame and completed by what follows from it.
 *
 * Use it when a tree's trunks and branches are to be looked at. What was not told is estimated with a stated error, or left out: nothing is invented.
 *
 * @param written `tree.structure` of a checked proposal; azimuths in degrees of any number of turns, from the front, or from where `frontAzimuthDeg` is counted from
 * @param tree its `trunk` (diameter and height in mm) stands in for trunk points that were not told
 * @throws SparebudError with every issue at once: `duplicate` and unknown ids, a `circle` of parents, what is `impossible` (a branch above the trunk, or thicker than what bears it)
 * @example readStructure({ branches: [{ id: 'low-left', heightMm: 120, azimuthDeg: 95, diameterMm: 12 }] }, { trunk: { diameterMm: 48, heightMm: 500 } })
 */
export const readStructure = (written: ToldStructure, tree: Pick<Proposal['tree'], 'trunk'> = {}): Structure => {
  const mainId = written.trunks?.find(({ from }) => from === undefined)?.id ?? 'trunk';
  const wrong = toldIssues(written, mainId);
  if (wrong.length > 0) throw new SparebudError(wrong);
  const front = written.frontAzimuthDeg ?? 0;
  const side = (azimuthDeg: number | undefined): { readonly azimuthDeg?: number } => (azimuthDeg === undefined ? {} : { azimuthDeg: turned(azimuthDeg - front) });
  const trunks = trunksOf(written.trunks ?? [], mainId, tree.trunk ?? {});
  const branches = new Map((written.branches ?? []).map((branch) => [branch.id, branch]));
  const sizes = new Map<string, Sized>();
  const sized = (branch: ToldBranch): Sized => {
    const kept = sizes.get(branch.id);
    if (kept !== undefined) return kept;
    const bearer = branch.from === undefined ? undefined : branches.get(branch.from);
    const size = sizeOf(branch, bearer === undefined ? diameterAt(trunks.find(({ id }) => id === (branch.from ?? mainId))!, branch.heightMm) : sized(bearer).diameterMm);
    sizes.set(branch.id, size);
    return size;
  };
  const read = [...branches.values()].map((branch): Branch => {
    const { id, heightMm, azimuthDeg, lengthMm, pitchDeg, foliageShare, foliageBackToMm, budsAtMm = [], padMm, dead = false, role = 'undecided', faults = [], from = mainId } = branch;
    return {
      id, from, trunkId: rootOf(branch, branches, mainId), onTrunk: !branches.has(from), heightMm,
      ...side(azimuthDeg), ...sized(branch),
      ...(foliageShare === undefined ? {} : { foliageShare: told(foliageShare) }),
      ...(lengthMm === undefined ? {} : { lengthMm }), ...(pitchDeg === undefined ? {} : { pitchDeg }),
      ...(foliageBackToMm === undefined ? {} : { foliageBackToMm }), ...(padMm === undefined ? {} : { padMm }),
      budsAtMm: [...budsAtMm].sort((a, b) => a - b), dead, role, faults,
    };
  }).sort((a, b) => a.heightMm - b.heightMm || (a.id < b.id ? -1 : 1));
  const baseMm = tree.trunk?.diameterMm ?? trunks[0]!.points[0]?.diameterMm;
  const height = heightOf(tree.trunk?.heightMm, trunks, read);
  const structure = withFoliageShares({
    trunks, branches: read,
    wounds: (written.wounds ?? []).map(({ heightMm, azimuthDeg, widthMm, closed = false }) => ({ heightMm, ...side(azimuthDeg), widthMm, closed })),
    ...(baseMm === undefined || baseMm === 0 ? {} : { baseMm: told(baseMm) }),
    ...(height === undefined ? {} : { heightMm: height }),
  });
  const issues = impossible(structure, written);
  if (issues.length > 0) throw new SparebudError(issues);
  return structure;
};

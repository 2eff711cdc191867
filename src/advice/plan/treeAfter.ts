import type { Proposal } from '../../contract/types.generated.js';
import type { Knowledge, Left } from '../../knowledge/knowledge.js';
import { takesBranch } from '../../knowledge/takesBranch.js';

type Tree = Proposal['tree'];
type Operation = Proposal['operation'];
type Structure = NonNullable<Tree['structure']>;
type Branch = NonNullable<Structure['branches']>[number];

/** The state that an operation leaves, as its parameters tell it; undefined where it leaves none. */
export const stateLeft = (state: Left | undefined, operation: Operation): string | undefined => {
  if (state === undefined || typeof state === 'string') return state;
  const told = (operation as unknown as Readonly<Record<string, unknown>>)[state.parameter];
  return typeof told === 'string' ? (state.as?.[told] ?? told) : undefined;
};

/** A branch and all that grows from it. */
const withAllOn = (branches: readonly Branch[], id: string): ReadonlySet<string> => {
  const gone = new Set([id]);
  let before = 0;
  while (gone.size > before) {
    before = gone.size;
    for (const branch of branches) if (branch.from !== undefined && gone.has(branch.from)) gone.add(branch.id);
  }
  return gone;
};

const widthOf = (branch: Branch, operation: Operation, tree: Tree): number | undefined =>
  branch.diameterMm ?? operation.branchDiameterMm ?? (branch.branchToTrunk === undefined || tree.trunk?.diameterMm === undefined ? undefined : branch.branchToTrunk * tree.trunk.diameterMm);

const thousandth = (share: number): number => Math.round(share * 1000) / 1000;

/** The branches that stay, and the share of the foliage that is left which each carries. */
const staying = (branches: readonly Branch[], gone: ReadonlySet<string>): readonly Branch[] => {
  const taken = branches.reduce((sum, branch) => sum + (gone.has(branch.id) ? (branch.foliageShare ?? 0) : 0), 0);
  return branches.filter(({ id }) => !gone.has(id)).map((branch) => (branch.foliageShare === undefined || taken <= 0 || taken >= 1 ? branch : { ...branch, foliageShare: Math.min(1, thousandth(branch.foliageShare / (1 - taken))) }));
};

/** The structure without a branch, and with the wound it leaves on the trunk; a stub stays, dead, until it is cleaned, and deadwood stays. */
const withoutBranch = (structure: Structure, operation: Operation, tree: Tree, { growing, facts, operations }: Knowledge): Structure => {
  const branches = structure.branches ?? [];
  const branch = branches.find((each) => each.id === operation.branch);
  if (branch === undefined) return structure;
  const gone = withAllOn(branches, branch.id);
  const kept = staying(branches, gone);
  if (operation.finish === 'stub' || operations[operation.op]!.leaves.branchStays === true) {
    const at = branches.slice(0, branches.indexOf(branch)).filter(({ id }) => !gone.has(id)).length;
    return { ...structure, branches: [...kept.slice(0, at), { ...branch, dead: true, foliageShare: 0 }, ...kept.slice(at)] };
  }
  const widthMm = widthOf(branch, operation, tree);
  const onTrunk = !branches.some((each) => each.id === branch.from);
  if (widthMm === undefined || !onTrunk) return { ...structure, branches: [...kept] };
  const finish = operation.finish ?? (facts['cut.finish']!.assume!['default'] as string);
  const wound = { heightMm: branch.heightMm, ...(branch.azimuthDeg === undefined ? {} : { azimuthDeg: branch.azimuthDeg }), widthMm: thousandth(widthMm * (growing.woundPerBranch[finish] ?? 1)) };
  return { ...structure, branches: [...kept], wounds: [...(structure.wounds ?? []), wound] };
};

/** The main trunk: the first that leaves no other, as it is everywhere. */
const mainOf = ({ trunks = [] }: Structure): string => trunks.find(({ from }) => from === undefined)?.id ?? 'trunk';

const isOnMain = (branch: Branch, structure: Structure): boolean => branch.from === undefined || branch.from === mainOf(structure);

/** How high a chop cuts: as told, else to the branch that is marked as the leader. */
const cutHeightMm = ({ heightMm }: Operation, structure: Structure = {}): number | undefined =>
  heightMm ?? structure.branches?.find((branch) => branch.role === 'leader' && branch.dead !== true && isOnMain(branch, structure))?.heightMm;

/** The tree without what stood above a cut through its main trunk: branches, and trunks that leave it there. */
const withoutTop = (tree: Tree, heightMm: number): Tree => {
  const { structure = {}, trunk } = tree;
  const { trunks = [], branches = [], wounds } = structure;
  const goneTrunks = trunks.reduce<ReadonlySet<string>>((gone, { id, from, atMm = 0 }) => (from !== undefined && (gone.has(from) || (from === mainOf(structure) && atMm > heightMm)) ? new Set([...gone, id]) : gone), new Set());
  const goes = (branch: Branch): boolean => (isOnMain(branch, structure) ? branch.heightMm > heightMm : goneTrunks.has(branch.from!));
  const gone = new Set(branches.filter(goes).flatMap(({ id }) => [...withAllOn(branches, id)]));
  const left = trunks.filter(({ id }) => !goneTrunks.has(id)).map((each) => (each.id === mainOf(structure) ? { ...each, points: each.points.filter((point) => point.heightMm <= heightMm) } : each));
  const tallest = Math.max(heightMm, ...left.flatMap(({ points }) => points.map((point) => point.heightMm)));
  return {
    ...tree,
    ...(trunk?.heightMm === undefined ? {} : { trunk: { ...trunk, heightMm: Math.min(trunk.heightMm, tallest) } }),
    ...(tree.structure === undefined ? {} : {
      structure: {
        ...structure,
        ...(structure.trunks === undefined ? {} : { trunks: left }),
        ...(structure.branches === undefined ? {} : { branches: [...staying(branches, gone)] }),
        ...(wounds === undefined ? {} : { wounds: wounds.filter((wound) => wound.heightMm <= heightMm) }),
      },
    }),
  };
};

/**
 * The tree as it stands after one sitting: its log longer, and what `leaves` of shared/operations.yaml says of each operation.
 * What was seen of phase and flowers holds for the day on which it was seen: the phase stays as a sighting.
 */
export const treeAfter = (tree: Tree, date: string, operations: readonly Operation[], knowledge: Knowledge): Tree => {
  const { phase, flower: _, ...rest } = tree;
  const seen = phase === undefined ? [] : [{ saw: phase, date }];
  let after: Tree = { ...rest, log: [...(tree.log ?? []), ...seen, ...operations.map((operation) => ({ ...operation, date }))] };
  for (const operation of operations) {
    const { leaves } = knowledge.operations[operation.op]!;
    for (const field of ['growing', 'standing', 'rootState'] as const) {
      const state = stateLeft(leaves[field], operation);
      if (state !== undefined) after = { ...after, [field]: state };
    }
    if (leaves.repotted === true) after = { ...after, lastRepotted: date };
    if (takesBranch(operation, knowledge) && after.structure !== undefined && operation.branch !== undefined) after = { ...after, structure: withoutBranch(after.structure, operation, after, knowledge) };
    const cutMm = leaves.takesTop === true ? cutHeightMm(operation, after.structure) : undefined;
    if (cutMm !== undefined) after = withoutTop(after, cutMm);
  }
  return after;
};

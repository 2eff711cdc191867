import type { Proposal } from '../../contract/types.generated.js';
import type { Knowledge, Left } from '../../knowledge/knowledge.js';

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

/** The structure without a branch, and with the wound it leaves on the trunk; a stub stays, dead, until it is cleaned. */
const withoutBranch = (structure: Structure, operation: Operation, tree: Tree): Structure => {
  const branches = structure.branches ?? [];
  const branch = branches.find((each) => each.id === operation.branch);
  if (branch === undefined) return structure;
  const gone = withAllOn(branches, branch.id);
  const stub = operation.finish === 'stub';
  const kept = branches.filter((each) => !gone.has(each.id) || (stub && each === branch)).map((each) => (stub && each === branch ? { ...each, dead: true, foliageShare: 0 } : each));
  const widthMm = widthOf(branch, operation, tree);
  const onTrunk = !branches.some((each) => each.id === branch.from);
  if (stub || widthMm === undefined || !onTrunk) return { ...structure, branches: kept };
  const wound = { heightMm: branch.heightMm, ...(branch.azimuthDeg === undefined ? {} : { azimuthDeg: branch.azimuthDeg }), widthMm };
  return { ...structure, branches: kept, wounds: [...(structure.wounds ?? []), wound] };
};

/** The tree as it stands after one sitting: its log longer, and what `leaves` of shared/operations.yaml says of each operation. */
export const treeAfter = (tree: Tree, date: string, operations: readonly Operation[], { operations: words }: Knowledge): Tree => {
  const { phase, ...rest } = tree;
  const seen = phase === undefined ? [] : [{ saw: phase, date }];
  let after: Tree = { ...rest, log: [...(tree.log ?? []), ...seen, ...operations.map((operation) => ({ ...operation, date }))] };
  for (const operation of operations) {
    const { leaves } = words[operation.op]!;
    for (const field of ['growing', 'standing', 'rootState'] as const) {
      const state = stateLeft(leaves[field], operation);
      if (state !== undefined) after = { ...after, [field]: state };
    }
    if (leaves.repotted === true) after = { ...after, lastRepotted: date };
    if (leaves.takesBranch === true && after.structure !== undefined && operation.branch !== undefined) after = { ...after, structure: withoutBranch(after.structure, operation, after) };
  }
  return after;
};

import type { Branch } from '../../structure/tree.js';
import type { Asked } from '../asked.js';
import { branchAsked } from './branchAsked.js';
import { type FactValue, known } from '../factValue.js';
import { measured } from './measured.js';
import { workedNumber } from '../workedNumber.js';

const onMain = ({ built }: Asked): readonly Branch[] => built?.structure.branches.filter((branch) => branch.onTrunk && branch.trunkId === built.structure.trunks[0]!.id && !branch.dead) ?? [];

/** The branch that is to lead after a chop: the one that is marked so, else the highest that the cut leaves. */
export const newLeader = (asked: Asked): Branch | undefined => {
  const marked = onMain(asked).find(({ role }) => role === 'leader');
  const heightMm = asked.proposal.operation.heightMm;
  return marked ?? (heightMm === undefined ? undefined : onMain(asked).filter((branch) => branch.heightMm <= heightMm).at(-1));
};

/** How high the trunk is cut: as told, else just above the branch that is to lead. */
export const chopHeightMm = (asked: Asked): number | undefined => asked.proposal.operation.heightMm ?? newLeader(asked)?.heightMm;

/** Share of the foliage that a chop takes: all but what the branches at or below the cut carry. */
export const foliageAbove = (asked: Asked): FactValue | undefined => {
  const heightMm = chopHeightMm(asked);
  if (heightMm === undefined || onMain(asked).length === 0) return undefined;
  const shares = onMain(asked).filter((branch) => branch.heightMm <= heightMm).map(({ foliageShare }) => foliageShare);
  if (shares.includes(undefined)) return undefined;
  return shares.length === 0 ? known(1, 'worked-out') : workedNumber(shares.map((share) => measured(share!)), (...each) => Math.max(0, 1 - each.reduce((sum, share) => sum + share, 0)));
};

/** Whether the structure tells of green below the cut: a living branch below a chop, and none where those above it carry all of the foliage; foliage that reaches further back than the last node left. Undefined where it does not tell. */
export const greenBelow = (asked: Asked, nodesLeft: number | undefined): boolean | undefined => {
  if (asked.operation.id === 'trunk-chop') {
    const heightMm = chopHeightMm(asked);
    if (heightMm === undefined) return undefined;
    if (onMain(asked).some((branch) => branch.heightMm <= heightMm)) return true;
    const carried = onMain(asked).reduce((sum, { foliageShare }) => sum + (foliageShare?.certainty === 'told' ? foliageShare.value : 0), 0);
    /* Shares are told by eye: a twentieth short of all is all. */
    return carried >= 0.95 ? false : undefined;
  }
  const branch = branchAsked(asked);
  const lastMm = nodesLeft === undefined ? undefined : nodesLeft === 0 ? 0 : branch?.budsAtMm[nodesLeft - 1];
  return lastMm === undefined || branch?.foliageBackToMm === undefined || !asked.operation.parameters.includes('nodesLeft') ? undefined : branch.foliageBackToMm <= lastMm;
};

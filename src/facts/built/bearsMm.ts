import { diameterAt } from '../../structure/trunkAt.js';
import type { Asked } from '../asked.js';
import { type FactValue, unknown } from '../factValue.js';
import { branchAsked } from './branchAsked.js';
import { chopHeightMm } from './chop.js';
import { measured } from './measured.js';

/** Diameter of what is cut into: the trunk just above the joint, or the branch that bears it; undefined where the structure does not tell it. */
export const bearsMm = (asked: Asked): FactValue | undefined => {
  const branch = branchAsked(asked);
  const { structure } = asked.built!;
  if (branch !== undefined && !branch.onTrunk) {
    const bearer = structure.branches.find(({ id }) => id === branch.from)?.diameterMm;
    return bearer === undefined ? unknown() : measured(bearer);
  }
  const heightMm = asked.operation.id === 'trunk-chop' ? chopHeightMm(asked) : (branch?.heightMm ?? asked.proposal.operation.heightMm);
  const trunk = structure.trunks.find(({ id }) => id === (branch?.trunkId ?? structure.trunks[0]!.id));
  const here = trunk === undefined || heightMm === undefined ? undefined : diameterAt(trunk, heightMm);
  return here === undefined ? undefined : measured(here);
};

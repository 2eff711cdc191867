import type { Branch, Trunk } from '../../structure/tree.js';
import { trunkAsBranch } from '../../structure/trunkAsBranch.js';
import type { Asked } from '../asked.js';

/** Whether the work is on a trunk that leaves another. */
export const trunkAsked = ({ built, proposal }: Asked): Trunk | undefined => built?.structure.trunks.slice(1).find(({ id }) => id === proposal.operation.branch);

/** The branch of a name, where the structure tells it. */
export const branchNamed = ({ built }: Asked, name: unknown): Branch | undefined => {
  if (built === undefined || name === undefined) return undefined;
  const { structure } = built;
  const trunk = structure.trunks.slice(1).find(({ id }) => id === name);
  return trunk === undefined ? structure.branches.find(({ id }) => id === name) : trunkAsBranch(structure, trunk);
};

/** The branch that the work is on, where the structure tells it. */
export const branchAsked = (asked: Asked): Branch | undefined => branchNamed(asked, asked.proposal.operation.branch);

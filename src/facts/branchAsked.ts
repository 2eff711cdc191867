import { over, told } from '../structure/measure.js';
import type { Branch, Structure, Trunk } from '../structure/tree.js';
import { diameterAt } from '../structure/trunkAt.js';
import type { Asked } from './asked.js';

/** A trunk that leaves another, as the branch of it that it is. */
const asBranch = ({ id, from, atMm = 0, points }: Trunk, { trunks }: Structure): Branch => {
  const [own, bears] = [points[0], diameterAt(trunks.find((trunk) => trunk.id === from) ?? trunks[0]!, atMm)];
  const ratio = own === undefined || bears === undefined ? undefined : over(told(own.diameterMm), bears);
  return {
    id, from: from ?? trunks[0]!.id, trunkId: from ?? trunks[0]!.id, onTrunk: true, heightMm: atMm, budsAtMm: [], dead: false, role: 'undecided', faults: [],
    ...(own === undefined ? {} : { diameterMm: told(own.diameterMm) }), ...(ratio === undefined ? {} : { aspectRatio: ratio }),
  };
};

/** Whether the work is on a trunk that leaves another. */
export const trunkAsked = ({ structure, proposal }: Asked): Trunk | undefined => structure?.trunks.slice(1).find(({ id }) => id === proposal.operation.branch);

/** The branch of a name, where the structure tells it. */
export const branchNamed = ({ structure }: Asked, name: unknown): Branch | undefined => {
  if (structure === undefined || name === undefined) return undefined;
  const trunk = structure.trunks.slice(1).find(({ id }) => id === name);
  return trunk === undefined ? structure.branches.find(({ id }) => id === name) : asBranch(trunk, structure);
};

/** The branch that the work is on, where the structure tells it. */
export const branchAsked = (asked: Asked): Branch | undefined => branchNamed(asked, asked.proposal.operation.branch);

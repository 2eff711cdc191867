import { over, told } from './measure.js';
import type { Branch, Structure, Trunk } from './tree.js';
import { diameterAt } from './trunkAt.js';

/** A trunk that leaves another, as the branch of it that it is. */
export const trunkAsBranch = ({ trunks }: Structure, { id, from = trunks[0]!.id, atMm = 0, points }: Trunk): Branch => {
  const [own, bears] = [points[0], diameterAt(trunks.find((trunk) => trunk.id === from) ?? trunks[0]!, atMm)];
  const ratio = own === undefined || bears === undefined ? undefined : over(told(own.diameterMm), bears);
  return {
    id, from, trunkId: from, onTrunk: true, heightMm: atMm, budsAtMm: [], dead: false, role: 'undecided', faults: [],
    ...(own === undefined ? {} : { diameterMm: told(own.diameterMm) }), ...(ratio === undefined ? {} : { aspectRatio: ratio }),
  };
};

import { severity } from '../structure/severity.js';
import type { Asked, Read } from './asked.js';
import { assumed, type FactValue, known } from './factValue.js';
import { workedNumber } from './workedNumber.js';

/** A sum of shares without the crumbs of its halves. */
export const thousandth = (share: number): number => Math.round(1000 * share) / 1000;

/** Foliage that the work itself takes. */
const ownFoliage = (read: Read, { operation, knowledge }: Asked): FactValue =>
  operation.parameters.includes('foliageShare') || operation.leaves.takesBranch === true || knowledge.growing.tipsToFoliage[operation.id] !== undefined ? read('cut.foliageShare') : known(0, 'worked-out');

/** What the work itself cuts, as a share of the trunk's section. */
const ownCutArea = (read: Read, asked: Asked): FactValue => {
  const { operation, knowledge } = asked;
  if (!operation.leavesWound || !operation.parameters.includes('branchDiameterMm')) return known(0, 'worked-out');
  /* Where the trunk is told point by point, the ratio is to the trunk at the joint, the section to the trunk above the roots. */
  const [branch, trunk] = [read('cut.branchDiameterMm'), read('tree.trunkDiameterMm')];
  if (asked.built?.branchNamed(asked, asked.proposal.operation.branch) !== undefined && branch.value !== undefined && trunk.value !== undefined) return workedNumber([branch, trunk], (cutMm, trunkMm) => severity([cutMm], trunkMm));
  const ratio = read('cut.branchToTrunk');
  if (ratio.value === undefined) return assumed(knowledge.facts['sitting.cutAreaShare']!.assume!['default']!);
  return { ...ratio, value: (ratio.value as number) ** 2, from: 'worked-out' };
};

/** What work by itself takes of foliage and of the trunk's section, and the most that a sitting can. */
export const ownShares = {
  'sitting.foliageShare': { own: ownFoliage, atMost: 1 },
  /** Cut surfaces added up over the trunk's section: BS 3998, draft of 2008, annex E (quoted). */
  'sitting.cutAreaShare': { own: ownCutArea, atMost: 5 },
} as const;

import type { Measure } from '../../structure/measure.js';
import type { Asked, Derive } from '../asked.js';
import { type FactValue, known, unknown } from '../factValue.js';
import { workedNumber } from '../workedNumber.js';
import { bearsMm } from './bearsMm.js';
import { branchAsked } from './branchAsked.js';
import { foliageAbove, greenBelow, newLeader } from './chop.js';
import { girthAtLevel } from './girthAtLevel.js';
import { measured } from './measured.js';

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** A cut that leaves nodes is made somewhere along the branch, where it is thinner than at its joint. */
const alongBranch = ({ operation }: Asked): boolean => operation.parameters.includes('nodesLeft');

/** A size of the branch that the work is on, or that is to lead after a chop; along the branch it is at most what it is at the joint. */
const ofBranchAsked = (asked: Asked, size: 'diameterMm' | 'aspectRatio'): FactValue | undefined => {
  const told: Measure | undefined = (asked.operation.id === 'trunk-chop' ? newLeader(asked) : branchAsked(asked))?.[size];
  if (told === undefined) return undefined;
  return alongBranch(asked) ? unknown({ atLeast: 0, atMost: round(told.atMost) }) : measured(told);
};

/** Facts of cuts and wounds, as far as the structure tells them. */
export const cutFacts: Readonly<Record<string, Derive>> = {
  /* On an evergreen a node behind the last green carries no bud that shows. */
  'cut.budsLeft': (read, asked) => {
    const nodes = read('cut.nodesLeft');
    return nodes.state === 'known' && asked.traits['form.leafHabit']?.is === 'evergreen' && greenBelow(asked, nodes.value as number) === false ? known(0, 'worked-out') : undefined;
  },
  'cut.foliageLeft': (_, asked, told) => {
    const green = greenBelow(asked, told('cut.nodesLeft') as number | undefined);
    return green === undefined ? undefined : known(green, 'worked-out');
  },
  /* A ratio that is told for the work goes before the measures of the branch. */
  'cut.branchDiameterMm': (read, asked, told) => {
    const bears = bearsMm(asked) ?? read('tree.trunkDiameterMm');
    return told('cut.branchToTrunk') !== undefined && bears.value !== undefined ? undefined : ofBranchAsked(asked, 'diameterMm');
  },
  'cut.branchToTrunk': (_, asked, told) => (told('cut.branchDiameterMm') === undefined ? ofBranchAsked(asked, 'aspectRatio') : undefined),
  'cut.foliageShare': (read, asked) => {
    if (asked.operation.id === 'trunk-chop') return foliageAbove(asked);
    const branch = branchAsked(asked)?.foliageShare;
    if (branch === undefined) return undefined;
    const tips = asked.knowledge.growing.tipsToFoliage[asked.operation.id];
    if (tips !== undefined) return workedNumber([read('shoots.shareRemoved'), measured(branch)], (taken, of) => taken * tips * of);
    return asked.operation.leaves.takesBranch === true && read('deadwood.on').value !== 'trunk' ? measured(branch) : undefined;
  },
  'wound.girthShare': (read, asked) => (asked.operation.id === 'strip-bark' ? undefined : girthAtLevel(read, asked)),
};

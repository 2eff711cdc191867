import type { Asked } from './asked.js';
import { thousandth } from './ownShares.js';
import type { Strain } from './strain.js';

/** Work of one day as far as it hangs together. */
export interface Sitting {
  readonly ops: readonly string[];
  readonly strains: readonly Strain[];
  readonly foliageShare: number;
  readonly cutAreaShare: number;
}

/** Hard jobs of a sitting. Jobs that are light each, but take together as much as would make one of them hard, are one hard job. */
export const hardJobs = ({ ops, strains, ...shares }: Sitting, { knowledge }: Asked): number => {
  const together = ops.some((op) => (['foliageShare', 'cutAreaShare'] as const).some((share) => thousandth(shares[share]) >= (knowledge.operations[op]?.strain.hardFrom?.[`sitting.${share}`] ?? Infinity)));
  return Math.max(strains.filter((strain) => strain === 'hard').length, together ? 1 : 0);
};

/** What a sitting asks of the tree, by `strain` of shared/growing.yaml (practice): each hard job its points, light ones theirs once together. */
export const sittingPoints = (sitting: Sitting, asked: Asked): number => {
  const { light, hard } = asked.knowledge.growing.strain;
  const all = hardJobs(sitting, asked);
  /* A light job that the others made hard is not light besides. */
  const each = sitting.strains.filter((strain) => strain === 'hard').length;
  return all * hard + (all === each && sitting.strains.includes('light') ? light : 0);
};

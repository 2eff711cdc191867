import { levelCloseness } from './levelCloseness.js';
import type { Branch, Structure } from './tree.js';
import { diameterAt } from './trunkAt.js';

/**
 * The branches of each trunk in levels, from the soil upward: neighbours in height join where they read as one level, and a level closes once it spans a trunk's
 * diameter, so that a ladder of branches is not chained into one whorl.
 */
export const levelsOf = (structure: Structure, branches: readonly Branch[] = structure.branches): readonly (readonly Branch[])[] => {
  const levels: Branch[][] = [];
  for (const trunk of structure.trunks) {
    let level: Branch[] = [];
    for (const branch of branches.filter((each) => each.onTrunk && each.trunkId === trunk.id)) {
      const [lowest, highest] = [level[0], level.at(-1)];
      const apart = highest === undefined ? undefined : levelCloseness(structure, highest, branch);
      const joins = apart !== undefined && apart < 1 && branch.heightMm - lowest!.heightMm <= (diameterAt(trunk, lowest!.heightMm)?.value ?? Infinity);
      if (!joins) levels.push((level = []));
      level.push(branch);
    }
  }
  return levels;
};

/** The level that a branch belongs to. */
export const levelOf = (structure: Structure, branch: Branch): readonly Branch[] => levelsOf(structure).find((level) => level.includes(branch)) ?? [branch];

import type { KeepersSet } from '../advice/keepers/keepers.js';
import { branchLine, type BranchLine, type Place } from '../structure/branchLine.js';
import type { Branch, Structure } from '../structure/tree.js';

/** What becomes of a branch: kept, off at the first sitting, off at a later one; as it is where no set tells. */
export type Fate = 'is' | 'keep' | 'now' | 'later' | 'dead';

/** A branch as it is drawn: a line in space, and how sure its length and rise are. */
export interface DrawnBranch {
  readonly branch: Branch;
  readonly number: number;
  readonly line: BranchLine;
  /** Whether its length, its pitch or its side was not told, so that it is drawn at a usual one. */
  readonly guessed: boolean;
  readonly fate: Fate;
  readonly on?: string;
}

/** A branch whose length or pitch is not told is drawn so long, as a share of the tree's height, and so steep. */
const usual = { lengthShare: 0.22, pitchDeg: 20 };

const between = ({ base, tip }: BranchLine, t: number): Place => ({ x: base.x + t * (tip.x - base.x), y: base.y + t * (tip.y - base.y), z: base.z + t * (tip.z - base.z) });

/** The stage at which a branch goes: its own, or that of what it grows from, or of the top that is cut off. */
const stageOf = (branch: Branch, { branches }: Structure, set: KeepersSet): number => {
  const own = set.stages.findIndex(({ remove }) => remove.includes(branch.id));
  if (own >= 0) return own;
  const bearer = branches.find(({ id }) => id === branch.from);
  return bearer === undefined || !set.remove.includes(bearer.id) ? Math.max(0, set.stages.findIndex(({ leader, remove }) => leader !== undefined || remove.includes(branch.trunkId))) : stageOf(bearer, { branches } as Structure, set);
};

const fateOf = (branch: Branch, structure: Structure, set: KeepersSet | undefined): Pick<DrawnBranch, 'fate' | 'on'> => {
  if (set === undefined) return { fate: branch.dead ? 'dead' : 'is' };
  if (!set.remove.includes(branch.id)) return { fate: 'keep' };
  const stage = stageOf(branch, structure, set);
  const on = set.stages[stage]?.date;
  return { fate: stage === 0 ? 'now' : 'later', ...(on === undefined ? {} : { on }) };
};

/** The branches of a tree as lines, numbered from the soil upward; one whose side is not told is left out, for nothing says where it stands. */
export const drawnBranches = (structure: Structure, set: KeepersSet | undefined): readonly DrawnBranch[] => {
  const lengthMm = usual.lengthShare * (structure.heightMm?.value ?? structure.trunks[0]!.points.at(-1)?.heightMm ?? 0);
  const drawn = new Map<string, DrawnBranch>();
  structure.branches.forEach((branch, i) => {
    const whole: Branch = { ...branch, lengthMm: branch.lengthMm ?? lengthMm, pitchDeg: branch.pitchDeg ?? usual.pitchDeg };
    const guessed = branch.lengthMm === undefined || branch.pitchDeg === undefined;
    const onTrunk = branchLine(structure, { ...whole, onTrunk: true });
    const bearer = drawn.get(branch.from)?.line;
    if (onTrunk === undefined) return;
    let line = onTrunk;
    if (bearer !== undefined) {
      const rise = bearer.tip.z - bearer.base.z;
      const foot = between(bearer, Math.abs(rise) < 1 ? 0.5 : Math.min(0.9, Math.max(0.2, (branch.heightMm - bearer.base.z) / rise)));
      line = { base: foot, tip: { x: foot.x + onTrunk.tip.x - onTrunk.base.x, y: foot.y + onTrunk.tip.y - onTrunk.base.y, z: foot.z + onTrunk.tip.z - onTrunk.base.z } };
    }
    drawn.set(branch.id, { branch, number: i + 1, line, guessed, ...fateOf(branch, structure, set) });
  });
  return [...drawn.values()];
};

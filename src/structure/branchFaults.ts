import { areParallel } from './areParallel.js';
import { angleBetween } from './azimuth.js';
import { meetingOf } from './crossing.js';
import type { Branch, Fault, Structure } from './tree.js';
import { insideCurve } from './trunkCurve.js';

/** Faults of a branch: those that its owner sees, and those that its measures show against the other living branches (practice calls them faults). */
export const branchFaults = (branch: Branch, structure: Structure): readonly Fault[] => {
  const faults = new Set<Fault>(branch.faults);
  if (!branch.onTrunk) return [...faults].sort();
  const { trunks, branches, heightMm } = structure;
  const others = branches.filter((other) => other.id !== branch.id && other.onTrunk && !other.dead);
  const meetings = others.flatMap((other) => meetingOf(structure, branch, other) ?? []);
  if (meetings.some(({ touches, crossesInView }) => touches || crossesInView)) faults.add('crossing');
  if (others.some((other) => areParallel(branch, other) === true)) faults.add('parallel');
  if (branch.azimuthDeg !== undefined) {
    if (insideCurve(trunks.find(({ id }) => id === branch.trunkId)!, branch.heightMm, branch.azimuthDeg) === true) faults.add('inside-curve');
    if (heightMm !== undefined && angleBetween(branch.azimuthDeg, 0) <= 40 && branch.heightMm < 0.6 * heightMm.value) faults.add('toward-front');
  }
  return [...faults].sort();
};

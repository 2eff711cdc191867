import { directionOf } from './azimuth.js';
import type { Branch, Structure } from './tree.js';
import { diameterAt, pointAt } from './trunkAt.js';

/** A place in space: to the viewer's right, to the back, up; in mm. */
export interface Place {
  readonly x: number;
  readonly y: number;
  readonly z: number;
}

/** A branch as a straight line from the bark of its trunk to its tip. */
export interface BranchLine {
  readonly base: Place;
  readonly tip: Place;
}

/** The line of a branch on a trunk; undefined where its side, length or pitch, or the trunk's diameter, is not known. */
export const branchLine = (structure: Structure, { azimuthDeg, lengthMm, pitchDeg, onTrunk, trunkId, heightMm }: Branch): BranchLine | undefined => {
  const trunk = structure.trunks.find((each) => each.id === trunkId)!;
  const trunkMm = diameterAt(trunk, heightMm)?.value;
  if (!onTrunk || azimuthDeg === undefined || lengthMm === undefined || pitchDeg === undefined || trunkMm === undefined) return undefined;
  const [out, pitch] = [directionOf(azimuthDeg), (pitchDeg * Math.PI) / 180];
  const { sideMm, backMm } = pointAt(trunk, heightMm);
  const base = { x: sideMm + (trunkMm / 2) * out.x, y: backMm + (trunkMm / 2) * out.y, z: heightMm };
  const reach = lengthMm * Math.cos(pitch);
  return { base, tip: { x: base.x + reach * out.x, y: base.y + reach * out.y, z: base.z + lengthMm * Math.sin(pitch) } };
};

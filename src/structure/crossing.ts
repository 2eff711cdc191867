import { branchLine, type BranchLine, type Place } from './branchLine.js';
import type { Branch, Structure } from './tree.js';

const minus = (a: Place, b: Place): Place => ({ x: a.x - b.x, y: a.y - b.y, z: a.z - b.z });
const dot = (a: Place, b: Place): number => a.x * b.x + a.y * b.y + a.z * b.z;
const along = (from: Place, way: Place, t: number): Place => ({ x: from.x + t * way.x, y: from.y + t * way.y, z: from.z + t * way.z });
const held = (t: number): number => Math.min(1, Math.max(0, t));

/** Least distance of two straight pieces: Ericson, Real-Time Collision Detection (2005), 5.1.9, from memory. */
export const leastDistance = (one: BranchLine, other: BranchLine): number => {
  const [d1, d2, r] = [minus(one.tip, one.base), minus(other.tip, other.base), minus(one.base, other.base)];
  const [a, e, f, c, b] = [dot(d1, d1), dot(d2, d2), dot(d2, r), dot(d1, r), dot(d1, d2)];
  if (a === 0 || e === 0) {
    const [s, t] = [a === 0 ? 0 : held(-c / a), e === 0 ? 0 : held(f / e)];
    const apart = minus(along(one.base, d1, s), along(other.base, d2, t));
    return Math.sqrt(dot(apart, apart));
  }
  const square = a * e - b * b;
  let s = square > 1e-9 * a * e ? held((b * f - c * e) / square) : 0;
  let t = (b * s + f) / e;
  if (t < 0 || t > 1) {
    t = held(t);
    s = held((b * t - c) / a);
  }
  const apart = minus(along(one.base, d1, s), along(other.base, d2, t));
  return Math.sqrt(dot(apart, apart));
};

/** Whether two lines cut each other as they are seen from the front. */
export const cutFromFront = (one: BranchLine, other: BranchLine): boolean => {
  const side = (a: Place, b: Place, p: Place): number => (b.x - a.x) * (p.z - a.z) - (b.z - a.z) * (p.x - a.x);
  const parted = (a: Place, b: Place, line: BranchLine): boolean => side(a, b, line.base) * side(a, b, line.tip) < 0;
  return parted(one.base, one.tip, other) && parted(other.base, other.tip, one);
};

/** How two branches meet: how near they come, whether wood or foliage touches, and whether they cross as seen from the front. */
export interface Meeting {
  readonly apartMm: number;
  readonly touches: boolean;
  readonly crossesInView: boolean;
}

/** How two branches of the same tree meet; undefined where a side, a length or a pitch is not known. A foliage pad is as wide as told, bare wood as it is thick. */
export const meetingOf = (structure: Structure, a: Branch, b: Branch): Meeting | undefined => {
  const [one, other] = [branchLine(structure, a), branchLine(structure, b)];
  if (one === undefined || other === undefined) return undefined;
  const half = (branch: Branch): number => ((branch.diameterMm?.value ?? 0) + (branch.padMm ?? 0)) / 2;
  const apartMm = leastDistance(one, other);
  return { apartMm, touches: apartMm <= half(a) + half(b), crossesInView: cutFromFront(one, other) };
};

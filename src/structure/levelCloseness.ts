import { angleBetween } from './azimuth.js';
import type { Branch, Structure } from './tree.js';
import { diameterAt } from './trunkAt.js';

/** The size that the trunk has, or is to have: then branches that stand apart now may read as one level. */
export interface AimedSize {
  readonly trunkDiameterMm?: number;
  readonly heightMm?: number;
}

const tan20 = Math.tan((20 * Math.PI) / 180);

/**
 * The gap in height under which two branches read as one level: as thick as they are themselves, or as flat as 20 degrees across the trunk (practice), or three
 * hundredths of the tree's height, less of it towards the apex (main branches are kept 3 % of the height apart: treeclimbersonline.net, permanent branches).
 */
const levelGapMm = (heightMm: number, meanBranchMm: number, trunkMm: number | undefined, treeMm: number | undefined): number => {
  const least = treeMm === undefined ? 0 : 0.03 * treeMm * Math.min(1, Math.max(0.25, (treeMm - heightMm) / ((2 / 3) * treeMm)));
  return Math.max(meanBranchMm, tan20 * (trunkMm ?? 0), least);
};

/**
 * How far apart in height two branches of one trunk stand, in gaps that read as one level: below 0.5 one level, below 1 nearly, from 1 on staggered.
 *
 * Undefined where they stand on different trunks, or where neither the trunk nor the tree's height is known.
 */
export const levelCloseness = (structure: Structure, a: Branch, b: Branch, aimed: AimedSize = {}): number | undefined => {
  if (!a.onTrunk || !b.onTrunk || a.trunkId !== b.trunkId) return undefined;
  const trunk = structure.trunks.find((each) => each.id === a.trunkId)!;
  const heightMm = (a.heightMm + b.heightMm) / 2;
  const now = diameterAt(trunk, heightMm)?.value;
  const thicker = aimed.trunkDiameterMm === undefined || structure.baseMm === undefined ? 1 : Math.max(1, aimed.trunkDiameterMm / structure.baseMm.value);
  const gap = levelGapMm(heightMm, ((a.diameterMm?.value ?? 0) + (b.diameterMm?.value ?? 0)) / 2, now === undefined ? undefined : now * thicker, Math.max(aimed.heightMm ?? 0, structure.heightMm?.value ?? 0) || undefined);
  return gap === 0 ? undefined : Math.abs(a.heightMm - b.heightMm) / gap;
};

/** Two branches that leave the trunk at nearly one level, on opposite sides: a bar (practice). Undefined where it cannot be told. */
export const areBars = (structure: Structure, a: Branch, b: Branch, aimed: AimedSize = {}): boolean | undefined => {
  const apart = levelCloseness(structure, a, b, aimed);
  if (apart === undefined || apart >= 1) return apart === undefined ? undefined : false;
  return a.azimuthDeg === undefined || b.azimuthDeg === undefined ? undefined : angleBetween(a.azimuthDeg, b.azimuthDeg) >= 140;
};

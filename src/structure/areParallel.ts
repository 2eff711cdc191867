import { angleBetween } from './azimuth.js';
import type { Branch } from './tree.js';

/** Two branches that run the same way close above one another: within 20 degrees, 15 degrees of pitch and a fifth of the longer one's length (practice). Undefined where one of these is not known. */
export const areParallel = (a: Branch, b: Branch): boolean | undefined => {
  if (a.trunkId !== b.trunkId) return undefined;
  if (a.azimuthDeg === undefined || b.azimuthDeg === undefined || a.pitchDeg === undefined || b.pitchDeg === undefined || a.lengthMm === undefined || b.lengthMm === undefined) return undefined;
  return angleBetween(a.azimuthDeg, b.azimuthDeg) <= 20 && Math.abs(a.pitchDeg - b.pitchDeg) <= 15 && Math.abs(a.heightMm - b.heightMm) < 0.2 * Math.max(a.lengthMm, b.lengthMm);
};

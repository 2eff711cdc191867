import type { Measure } from './measure.js';
import type { Trunk, TrunkPoint } from './tree.js';

/** A cone that stands in for a trunk may be this much thinner or thicker than the trunk is (practice). */
const coneError = { thinner: 0.7, thicker: 1.5 };

/** Beyond its told points a trunk is guessed at: thinner above them, thicker below (practice). */
const beyondError = { above: 0.5, below: 1.25 };

const between = (a: TrunkPoint, b: TrunkPoint, heightMm: number): TrunkPoint => {
  const t = a.heightMm === b.heightMm ? 0 : (heightMm - a.heightMm) / (b.heightMm - a.heightMm);
  const mix = (from: number, to: number): number => from + t * (to - from);
  return { heightMm, diameterMm: mix(a.diameterMm, b.diameterMm), sideMm: mix(a.sideMm, b.sideMm), backMm: mix(a.backMm, b.backMm) };
};

/** The point of a trunk at a height, straight between its points; below the lowest and above the highest it stays as that is. */
export const pointAt = ({ points }: Trunk, heightMm: number): TrunkPoint => {
  const above = points.findIndex((point) => point.heightMm >= heightMm);
  if (above < 0) return { ...points.at(-1)!, heightMm };
  return above === 0 ? { ...points[0]!, heightMm } : between(points[above - 1]!, points[above]!, heightMm);
};

/** The diameter of a trunk at a height, in mm, and how well it is known; undefined where nothing tells it. */
export const diameterAt = (trunk: Trunk, heightMm: number): Measure | undefined => {
  const [lowest, highest] = [trunk.points[0], trunk.points.at(-1)];
  if (lowest === undefined || highest === undefined) return undefined;
  const value = pointAt(trunk, heightMm).diameterMm;
  if (!trunk.pointsTold) return heightMm <= 0 ? { value, atLeast: value, atMost: value, certainty: 'told' } : { value, atLeast: value * coneError.thinner, atMost: Math.min(lowest.diameterMm, value * coneError.thicker), certainty: 'estimated' };
  if (trunk.points.some((point) => point.heightMm === heightMm)) return { value, atLeast: value, atMost: value, certainty: 'told' };
  if (heightMm < lowest.heightMm) return { value, atLeast: value, atMost: value * beyondError.below, certainty: 'estimated' };
  if (heightMm > highest.heightMm) return { value, atLeast: value * beyondError.above, atMost: value, certainty: 'estimated' };
  return { value, atLeast: value, atMost: value, certainty: 'worked-out' };
};

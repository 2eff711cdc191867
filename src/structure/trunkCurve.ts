import { angleBetween, azimuthOf } from './azimuth.js';
import type { Trunk } from './tree.js';

/** A curve of a trunk: how deep it is as a share of its length, and to which side it is hollow. */
export interface Curve {
  readonly sagitta: number;
  readonly hollowDeg: number;
}

/** The curve of a trunk around a height: the told point nearest to it against the line between its neighbours. Undefined where the trunk's line was not told, and at its ends. */
export const trunkCurve = ({ points, lineTold }: Trunk, heightMm: number): Curve | undefined => {
  const inner = points.slice(1, -1);
  if (!lineTold || inner.length === 0) return undefined;
  const middle = inner.reduce((near, point) => (Math.abs(point.heightMm - heightMm) < Math.abs(near.heightMm - heightMm) ? point : near));
  const at = points.indexOf(middle);
  const [below, above] = [points[at - 1]!, points[at + 1]!];
  const t = (middle.heightMm - below.heightMm) / (above.heightMm - below.heightMm);
  const [x, y] = [below.sideMm + t * (above.sideMm - below.sideMm) - middle.sideMm, below.backMm + t * (above.backMm - below.backMm) - middle.backMm];
  const chord = Math.hypot(above.sideMm - below.sideMm, above.backMm - below.backMm, above.heightMm - below.heightMm);
  return { sagitta: Math.hypot(x, y) / chord, hollowDeg: azimuthOf({ x, y }) };
};

/** Whether a branch grows from the inside of a curve (practice calls it a fault); undefined where the curve is too slight, or not known. */
export const insideCurve = (trunk: Trunk, heightMm: number, azimuthDeg: number): boolean | undefined => {
  const curve = trunkCurve(trunk, heightMm);
  return curve === undefined || curve.sagitta <= 0.03 ? undefined : angleBetween(azimuthDeg, curve.hollowDeg) < 60;
};

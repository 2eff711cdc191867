import { levelsOf } from './levels.js';
import type { Structure, Trunk, TrunkPoint } from './tree.js';

/** How much a trunk thins from each point to the next, in mm a mm; below 0 it thickens upward. */
export const tapersOf = ({ points }: Trunk): readonly number[] =>
  points.slice(1).map((point, i) => (points[i]!.diameterMm - point.diameterMm) / (point.heightMm - points[i]!.heightMm));

/** A point where a trunk is thicker than below it. */
export interface InverseTaper {
  readonly heightMm: number;
  /** Over the point below. */
  readonly thicker: number;
  /** Where several branches leave it there: over what its neighbours would make it. */
  readonly bulge?: number;
}

/** A trunk thickens upward where a point exceeds the one below by more than measuring can be off: 3 %, or a millimetre on a thin one. */
const thickens = (below: TrunkPoint, above: TrunkPoint): boolean => above.diameterMm > below.diameterMm * (1 + Math.max(0.03, 1 / Math.max(1, below.diameterMm)));

/** Where a trunk is thicker than below it, and where that is the swelling of a knot of branches. Undefined where fewer than two points were told. */
export const inverseTapers = (structure: Structure, trunk: Trunk): readonly InverseTaper[] | undefined => {
  const { points } = trunk;
  if (!trunk.pointsTold || points.length < 2) return undefined;
  const knots = levelsOf(structure).filter((level) => level.length >= 2 && level[0]!.trunkId === trunk.id);
  return points.slice(1).flatMap((point, i): readonly InverseTaper[] => {
    const below = points[i]!;
    if (!thickens(below, point)) return [];
    const above = points[i + 2];
    const atKnot = knots.some((level) => level.some((branch) => Math.abs(branch.heightMm - point.heightMm) <= point.diameterMm / 2));
    const thicker = point.diameterMm / below.diameterMm;
    if (!atKnot || above === undefined) return [{ heightMm: point.heightMm, thicker }];
    const clean = below.diameterMm + ((point.heightMm - below.heightMm) / (above.heightMm - below.heightMm)) * (above.diameterMm - below.diameterMm);
    return [{ heightMm: point.heightMm, thicker, bulge: point.diameterMm / clean }];
  });
};

import { azimuthOf, directionOf, turned } from './azimuth.js';

/** The widest sector that no branch grows into, in degrees, and its middle; undefined where there is no branch. */
export const largestEmptySector = (azimuthsDeg: readonly number[]): { readonly widthDeg: number; readonly middleDeg: number } | undefined => {
  const sorted = azimuthsDeg.map(turned).sort((a, b) => a - b);
  if (sorted.length === 0) return undefined;
  const gaps = sorted.map((from, i) => ({ from, widthDeg: i + 1 < sorted.length ? sorted[i + 1]! - from : sorted[0]! + 360 - from }));
  const { from, widthDeg } = gaps.reduce((widest, gap) => (gap.widthDeg > widest.widthDeg ? gap : widest));
  return { widthDeg, middleDeg: turned(from + widthDeg / 2) };
};

/** How one-sided a tree is, by the sections of its branches: 0 even, 1 all on one side; and which side is the heavier. */
export const balance = (branches: readonly { readonly azimuthDeg: number; readonly diameterMm: number }[]): { readonly oneSided: number; readonly towardDeg: number } => {
  const whole = branches.reduce((sum, { diameterMm }) => sum + diameterMm ** 2, 0);
  const pull = branches.reduce((sum, { azimuthDeg, diameterMm }) => {
    const { x, y } = directionOf(azimuthDeg);
    return { x: sum.x + x * diameterMm ** 2, y: sum.y + y * diameterMm ** 2 };
  }, { x: 0, y: 0 });
  return { oneSided: whole === 0 ? 0 : Math.hypot(pull.x, pull.y) / whole, towardDeg: azimuthOf(pull) };
};

import { normalDensity, normalShare } from './normalCurve.js';

/**
 * How far days lie above a base on average, when single days scatter about a smooth mean.
 *
 * Use it for degree-days from normals: a smooth mean of 4 C still holds days of 9 C.
 * @param meanC smooth mean of the day, C
 * @param baseC base temperature, C
 * @param spreadC standard deviation of a single day about the mean, C; 0 gives the plain excess
 * @returns C, never negative: s (phi(z) + z Phi(z)) with z = (mean - base) / s
 * Source: expectation of a truncated normal variable.
 */
export const expectedExcess = (meanC: number, baseC: number, spreadC: number): number => {
  if (spreadC <= 0) return Math.max(0, meanC - baseC);
  const z = (meanC - baseC) / spreadC;
  if (z > 6) return meanC - baseC;
  if (z < -6) return 0;
  return Math.max(0, spreadC * (normalDensity(z) + z * normalShare(z)));
};

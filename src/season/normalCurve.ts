/** Density of the standard normal distribution. */
export const normalDensity = (z: number): number => Math.exp(-0.5 * z * z) / Math.sqrt(2 * Math.PI);

/**
 * Share of the standard normal distribution below z.
 *
 * Source: Abramowitz & Stegun 1964, formula 26.2.17, absolute error below 7.5e-8 (from memory; tested against tabled values).
 */
export const normalShare = (z: number): number => {
  const t = 1 / (1 + 0.2316419 * Math.abs(z));
  const tail = normalDensity(z) * t *
    (0.319381530 + t * (-0.356563782 + t * (1.781477937 + t * (-1.821255978 + t * 1.330274429))));
  return z >= 0 ? 1 - tail : tail;
};

/** Twelve monthly values of one cosine wave: `mean` the year's mean, `halfRange` above it at `warmest` (0..364, 1 January is 0). */
export const wave = (mean: number, halfRange: number, warmest: number): readonly number[] =>
  Array.from({ length: 12 }, (_, month) => mean + halfRange * Math.cos((2 * Math.PI * ((month + 0.5) * (365 / 12) - warmest)) / 365));

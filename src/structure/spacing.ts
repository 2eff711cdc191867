/** Heights that main branches are customarily given, gaps shrinking towards the top by `shrink` each (practice: a picture to compare with, not a measure). */
export const customaryHeights = (treeMm: number, firstMm: number, apexMm: number, branches: number, shrink = 0.8): readonly number[] => {
  const gap = ((treeMm - apexMm - firstMm) * (1 - shrink)) / (1 - shrink ** (branches - 1));
  return Array.from({ length: branches }, (_, k) => firstMm + (gap * (1 - shrink ** k)) / (1 - shrink));
};

const section = (diameterMm: number): number => (Math.PI / 4) * diameterMm ** 2;
const diameterOf = (sectionMm2: number): number => Math.sqrt((4 * sectionMm2) / Math.PI);

/** The section that a stem gained in the season that thickened it by so much. */
export const sectionGained = (diameterMm: number, thickenedMm: number): number => section(diameterMm) - section(Math.max(0, diameterMm - thickenedMm));

/** How thick a stem is after some years of one gain in section each: below the crown it stays about the same (Cortini 2013, Ann. For. Sci. 70:637). */
export const thickAfter = (diameterMm: number, sectionMm2PerYear: number, years: number): number => diameterOf(section(diameterMm) + sectionMm2PerYear * years);

/** What a branch that is kept for a while does to the trunk: growth goes with the foliage above a place, so it thickens only what is below it (Pressler's law). */
export const sacrificeWorth = (trunkMm: number, sectionMm2PerYear: number, foliageShare: number, years: number): { readonly belowMm: number; readonly aboveMm: number; readonly gainMm: number; readonly step: number } => {
  const [belowMm, aboveMm] = [thickAfter(trunkMm, sectionMm2PerYear, years), thickAfter(trunkMm, sectionMm2PerYear * (1 - foliageShare), years)];
  return { belowMm, aboveMm, gainMm: belowMm - aboveMm, step: belowMm / aboveMm };
};

/** Years until a branch is half as thick as its trunk, both thickening by so much a year; none where it is already, never where it cannot catch up. */
export const yearsToHalf = (branchMm: number, trunkMm: number, branchGainMm: number, trunkGainMm: number): number | undefined => {
  if (branchMm >= trunkMm / 2) return 0;
  const closing = branchGainMm - trunkGainMm / 2;
  return closing <= 0 ? undefined : (trunkMm / 2 - branchMm) / closing;
};

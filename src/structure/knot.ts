/** A collar is about this much wider than its branch (from memory). */
const collarPerBranch = 1.2;

/** Half the ring being collars, the other half has to feed round knots: what stands above is choked (the group choking its leader: UF, structural pruning; the half is worked out). */
export const swellsFrom = 0.5;

/** What branches at one level do to the trunk, `trunkMm` thick there. */
export interface Knot {
  /** Share of the girth that their collars take; over 1 they grow into each other. */
  readonly collarShare: number;
  /** Sections of the branches over that of the trunk. */
  readonly sectionShare: number;
  /** How much thicker the trunk is below them than above, by their sections. */
  readonly step: number;
}

export const knotOf = (diametersMm: readonly number[], trunkMm: number): Knot => {
  const sectionShare = diametersMm.reduce((sum, diameter) => sum + (diameter / trunkMm) ** 2, 0);
  return { collarShare: diametersMm.reduce((sum, diameter) => sum + collarPerBranch * diameter, 0) / (Math.PI * trunkMm), sectionShare, step: Math.sqrt(1 + sectionShare) };
};

/** How many branches of one ratio to the trunk a level bears before half its girth is collar. */
export const mostAtLevel = (aspectRatio: number): number => Math.floor((swellsFrom * Math.PI) / (collarPerBranch * aspectRatio));

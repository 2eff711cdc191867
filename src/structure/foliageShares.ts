/** Shares of the whole that branches and the top of the trunk carry, by the section of each: Leonardo's rule, sum of d^p; Eloy 2011, Phys. Rev. Lett. 107:258101 (p between 1.8 and 2.3). */
export const pipeShares = (diametersMm: readonly number[], topMm: number, power = 2): { readonly each: readonly number[]; readonly top: number } => {
  const whole = [...diametersMm, topMm].reduce((sum, diameter) => sum + diameter ** power, 0);
  const share = (diameter: number): number => (whole === 0 ? 0 : diameter ** power / whole);
  return { each: diametersMm.map(share), top: share(topMm) };
};

/** The trunk below branches and a top, by the same rule. */
export const trunkBelow = (diametersMm: readonly number[], power = 2): number => diametersMm.reduce((sum, diameter) => sum + diameter ** power, 0) ** (1 / power);

/** Diameter alone tells a branch's leaf mass less well than diameter, position and foliated length together, which explain 82 to 97 %: a log error of 0.3 is taken. */
const spread = Math.exp(1.645 * 0.3);

/** The range in which nine of ten shares lie that were estimated from a diameter. */
export const shareRange = (share: number): { readonly atLeast: number; readonly atMost: number } => ({
  atLeast: share / spread / (share / spread + 1 - share),
  atMost: (share * spread) / (share * spread + 1 - share),
});

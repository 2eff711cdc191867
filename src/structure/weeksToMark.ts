/**
 * Weeks of growth until wire marks: at the mean rate, and at the peak of growth.
 *
 * A coil does not give, so it marks once the wood has swollen by what the wire stood off and the depth of a mark.
 * @param ringMm wood added on one side in a season, mm
 * @param growingWeeks weeks of growth in a season
 * @param markMm depth of a mark that stays, mm
 * @param peak how much faster than the mean wood swells at its peak
 * @param slackMm how far the wire stands off, mm
 */
export const weeksToMark = (ringMm: number, growingWeeks: number, markMm: number, peak: number, slackMm = 0): { readonly mean: number; readonly atPeak: number } => {
  const mean = (slackMm + markMm) / (ringMm / growingWeeks);
  return { mean, atPeak: mean / peak };
};

/**
 * When a mixed temperate broadleaf canopy loses its green, in season days (days since the last midwinter).
 *
 * Use it as the date from which a species' turning is offset. Weak: 8 days off on average, and colouring of single species is hardly
 * predictable (Estrella & Menzel 2006, Climate Research 32:253).
 * @param annualMeanC annual mean temperature, C; beyond 0 and 20 C, where nothing was fitted, it counts as the limit
 * Source: line fitted on 62 PhenoCam sites of North America: day 263.3 + 2.68 per C; midwinter is 22 December.
 */
export const autumnDate = (annualMeanC: number): number => 263.3 + 9 + 2.68 * Math.min(20, Math.max(0, annualMeanC));

import { daysInYear, wrapYear } from './yearDay.js';

/** Median air frosts (0 C at screen height) of a normal year. */
export type FrostDates =
  | { readonly kind: 'dates'; /** 0..364, 1 January is 0 */ readonly last: number; readonly first: number }
  | { readonly kind: 'none' }
  | { readonly kind: 'all-year' };

/** The smoothed minimum on the day of the median last (first) frost. */
export interface FrostThreshold { readonly lastC: number; readonly firstC: number }

/** The one constant that fits most stations: smoothed minimum on the median last and first frost of 5,182 US stations. */
export const constantFrostThreshold: FrostThreshold = { lastC: 5.45, firstC: 5.45 };

// Rows: annual range of the smoothed daily mean under 15, under 18, under 24, wider. Columns: mean daily swing under 8, under 10, under 15, wider.
// In each cell: cool, mild and warm summer nights (mean minimum of the warmest month under 15, under 20, warmer), each as [last, first].
// Medians over one half of the US stations (NOAA NCEI 1981-2010; tests/outside/season holds the split and recomputes them). A class of under 8 stations takes
// its whole cell. Two exceptions: Mediterranean and Pacific climates with mild nights take the threshold of cool ones (their cell mixes with the Gulf
// coast otherwise), and the Gulf's own narrow years take the row below. Outside North America nothing was fitted.
type Pair = readonly [number, number];
const same = (pair: Pair): readonly Pair[] => [pair, pair, pair];
const table: readonly (readonly (readonly Pair[])[])[] = [
  [same([3.9, 4.0]), same([4.1, 4.4]), [[4.5, 4.5], [4.7, 4.6], [7.8, 7.3]], same([4.9, 4.2])],
  [same([2.5, 3.3]), [[3.4, 3.5], [4.4, 4.5], [7.7, 7.4]], [[4.3, 3.9], [4.3, 3.9], [7.8, 7.3]], same([4.7, 3.8])],
  [same([3.2, 3.9]), [[2.7, 2.6], [4.7, 5.9], [6.4, 6.2]], [[4.5, 4.5], [6.2, 5.8], [7.0, 6.4]], [[4.1, 3.7], [4.9, 3.9], [5.4, 4.4]]],
  [same([4.0, 4.6]), [[4.9, 5.4], [4.6, 5.3], [5.1, 5.3]], [[5.0, 5.2], [5.4, 5.9], [6.5, 6.1]], [[4.4, 4.2], [4.8, 4.9], [5.7, 4.8]]],
];

/** No reliable frost where even the coldest smoothed minimum stays above this: most such US stations have no median frost date. */
const noFrostAboveC = 8;

/**
 * The threshold for a climate.
 *
 * Use it rather than the constant: coasts need a lower one than continents, and humid summers a higher one than dry.
 * @param annualRangeC coldest to warmest smoothed daily mean, C
 * @param dailySwingC annual mean of maximum less minimum, C
 * @param warmestNightC mean minimum of the warmest month, C
 */
export const frostThreshold = (annualRangeC: number, dailySwingC: number, warmestNightC: number): FrostThreshold => {
  const row = annualRangeC < 15 ? 0 : annualRangeC < 18 ? 1 : annualRangeC < 24 ? 2 : 3;
  const column = dailySwingC < 8 ? 0 : dailySwingC < 10 ? 1 : dailySwingC < 15 ? 2 : 3;
  const pair = table[row]?.[column]?.[warmestNightC < 15 ? 0 : warmestNightC < 20 ? 1 : 2];
  return pair ? { lastC: pair[0], firstC: pair[1] } : constantFrostThreshold;
};

/**
 * Median last and first air frost from the smoothed minimum.
 *
 * Use it where no frost dates are stated. For dates of 10 % risk and for frost at a pot's rim see `frostOfYear`.
 * @param smoothMinC 365 smoothed daily minima, 1 January first, C
 * @param threshold what the smoothed minimum is on those dates
 * @returns dates as 0..364; `none` where frost is not reliable, `all-year` where no season is free of it
 */
export const frostDates = (smoothMinC: readonly number[], threshold: FrostThreshold): FrostDates => {
  let warmest = 0;
  smoothMinC.forEach((value, i) => { if (value > (smoothMinC[warmest] ?? value)) warmest = i; });
  const at = (yearDay: number): number => smoothMinC[wrapYear(yearDay)] ?? 0;
  if (at(warmest) < Math.max(threshold.lastC, threshold.firstC)) return { kind: 'all-year' };
  if (Math.min(...smoothMinC) > noFrostAboveC) return { kind: 'none' };
  let last = warmest;
  while (last > warmest - daysInYear && at(last) >= threshold.lastC) last -= 1;
  let first = warmest;
  while (first < warmest + daysInYear && at(first) >= threshold.firstC) first += 1;
  if (last <= warmest - daysInYear || first >= warmest + daysInYear) return { kind: 'none' };
  return { kind: 'dates', last: wrapYear(last), first: wrapYear(first) };
};

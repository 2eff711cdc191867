import { daysInYear } from './yearDay.js';

// Standard deviation of single nights about the smoothed minimum, by season day of mid-month: January, March, April, July, October, December.
const at: readonly number[] = [25, 83, 114, 205, 297, 359];
const continental: readonly number[] = [6.6, 5.9, 3.8, 2.9, 4.0, 5.4];
const maritime: readonly number[] = [5.4, 4.0, 3.5, 2.6, 4.0, 4.4];

const between = (values: readonly number[], seasonDay: number): number => {
  for (let i = 0; i < at.length; i += 1) {
    const from = at[i] ?? 0;
    const to = i + 1 < at.length ? (at[i + 1] ?? 0) : (at[0] ?? 0) + daysInYear;
    const day = seasonDay < (at[0] ?? 0) ? seasonDay + daysInYear : seasonDay;
    if (day >= from && day <= to) {
      const share = (day - from) / (to - from);
      return (values[i] ?? 0) * (1 - share) + (values[(i + 1) % at.length] ?? 0) * share;
    }
  }
  return values[0] ?? 0;
};

/**
 * The scatter of single nights about the smoothed minimum.
 *
 * Use it for how cold a night may be: a night at 1.3 standard deviations below the mean comes about three times a month.
 * @param meanC 365 smoothed means from midwinter on; their range tells how continental the place is
 * @returns standard deviations, C, by season day
 * Source: computed from 46 North American sites (range taken as 27 C) and Klein-Altendorf, Germany (17 C); between and beyond by a straight line, never under
 * 1.2 C. Beyond those two climates it is a guess.
 */
export const nightSpread = (meanC: readonly number[]): readonly number[] => {
  const range = Math.max(...meanC) - Math.min(...meanC);
  return meanC.map((_, seasonDay) => {
    const inland = between(continental, seasonDay);
    const coast = between(maritime, seasonDay);
    if (range < 17) return Math.max(1.2, 1.2 + ((coast - 1.2) * range) / 17);
    return coast + (inland - coast) * Math.min(1.2, (range - 17) / 10);
  });
};

import { autumnDate } from './autumnDate.js';
import type { Climate } from './climateShape.js';
import { daylength } from './daylength.js';
import { frostDates, frostThreshold } from './frostDates.js';
import { frozen } from './frozen.js';
import { fromMidwinter, midwinter, seasonDayOf } from './growingYear.js';
import { nightSpread } from './nightSpread.js';
import { smoothYear } from './smoothYear.js';
import { springForcing } from './springForcing.js';
import { daysInYear, yearDayOfText } from './yearDay.js';

/** All that follows from a climate alone, by season day (365 values from midwinter on), so that nothing after it knows a month or a hemisphere. */
export interface ClimateYear {
  readonly south: boolean;
  readonly minC: readonly number[];
  readonly maxC: readonly number[];
  readonly meanC: readonly number[];
  /** Scatter of single nights about the smoothed minimum, C. */
  readonly nightSpreadC: readonly number[];
  readonly daylengthH: readonly number[];
  /** Spring units of each day. */
  readonly forcing: readonly number[];
  readonly coldestMeanC: number;
  readonly coldestMonthMinC: number;
  readonly warmestMonthMinC: number;
  readonly annualMeanC: number;
  /** Median frosts in season days; `none` where frost is not reliable. */
  readonly frost: { readonly last: number; readonly first: number } | 'none' | 'all-year';
  /** Season day on which the falling day drops under 11 h, by the mean of both hemispheres; undefined where it never does. */
  readonly shortDays: number | undefined;
  /** First season day with at least 10 h of light, by the same mean. */
  readonly lightReturns: number;
  readonly autumn: number;
}

/** 2023, a year without a leap day: daylength of a date changes by seconds from year to year. */
const referenceYearStart = 19_358;

/** Day length under which shoots stop growing in the open, and a tree of warm lands behind a window is not taken to grow, h (practice: from early spring into autumn). */
export const growingLightH = 11;

/** Every fifth day by the sun, and straight lines between, a fifth of the work: within half a minute up to 50 degrees and two minutes up to 65; where the polar day or night sets in, hours off for a few days. */
const lightStep = 5;

const lightOfYear = (start: number, latitude: number): readonly number[] => {
  const sunlit = Array.from({ length: daysInYear / lightStep }, (_, i) => daylength(referenceYearStart + ((start + i * lightStep) % daysInYear), latitude));
  return Array.from({ length: daysInYear }, (_, i) => {
    const [before, after] = [sunlit[Math.floor(i / lightStep)]!, sunlit[(Math.floor(i / lightStep) + 1) % sunlit.length]!];
    return before + ((after - before) * (i % lightStep)) / lightStep;
  });
};

const work = (climate: Climate, minMonths: readonly number[], maxMonths: readonly number[]): ClimateYear => {
  const byYearMin = smoothYear(minMonths);
  const byYearMax = smoothYear(maxMonths);
  const byYearMean = byYearMin.map((low, i) => (low + (byYearMax[i] ?? low)) / 2);
  const average = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  // Without a latitude the warmer half of the year tells the hemisphere, and 45 degrees (10 in the tropics) stand in.
  const range = Math.max(...byYearMean) - Math.min(...byYearMean);
  const south = climate.latitude === undefined ? average(byYearMean.slice(90, 273)) < average(byYearMean) : climate.latitude < 0;
  const latitude = climate.latitude ?? (south ? -1 : 1) * (range < 6 ? 10 : 45);
  const start = midwinter(south);
  const daylengthH = lightOfYear(start, latitude);
  // The earth's path puts the two equinoxes some five days apart in the seasons of the hemispheres, less than growth can be told to: both are given the mean.
  const across = lightOfYear(midwinter(!south), -latitude);
  const light = daylengthH.map((hours, i) => (hours + across[i]!) / 2);
  const minC = fromMidwinter(byYearMin, south);
  const maxC = fromMidwinter(byYearMax, south);
  const meanC = fromMidwinter(byYearMean, south);
  const annualMeanC = average(meanC);
  const dailySwingC = average(maxC) - average(minC);
  const modelled = frostDates(byYearMin, frostThreshold(range, dailySwingC, Math.max(...minMonths)));
  const last = climate.lastFrost !== undefined ? yearDayOfText(climate.lastFrost) : modelled.kind === 'dates' ? modelled.last : undefined;
  const first = climate.firstFrost !== undefined ? yearDayOfText(climate.firstFrost) : modelled.kind === 'dates' ? modelled.first : undefined;
  const shortFrom = light.findIndex((hours, i) => i > 180 && hours < growingLightH);
  const returns = light.findIndex((hours) => hours >= 10);
  return {
    south, minC, maxC, meanC,
    nightSpreadC: nightSpread(meanC),
    daylengthH,
    forcing: springForcing(meanC, daylengthH),
    coldestMeanC: Math.min(...meanC),
    coldestMonthMinC: Math.min(...minMonths),
    warmestMonthMinC: Math.max(...minMonths),
    annualMeanC,
    frost: last !== undefined && first !== undefined
      ? { last: seasonDayOf(last, south), first: seasonDayOf(first, south) }
      : modelled.kind === 'all-year' ? 'all-year' : 'none',
    shortDays: shortFrom < 0 ? undefined : shortFrom,
    lightReturns: returns < 0 ? 120 : returns,
    autumn: autumnDate(annualMeanC),
  };
};

const kept = new WeakMap<Climate, ClimateYear>();

/**
 * The year that a climate gives, worked out once for each climate object; undefined where no temperatures are known.
 *
 * @param climate as `climateOf` gave it
 */
export const climateYear = (climate: Climate): ClimateYear | undefined => {
  if (climate.minC === undefined || climate.maxC === undefined) return undefined;
  const before = kept.get(climate);
  if (before !== undefined) return before;
  const year = frozen(work(climate, climate.minC, climate.maxC));
  kept.set(climate, year);
  return year;
};

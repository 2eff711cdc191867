import type { Climate } from './climateShape.js';
import { seasonDayOf } from './growingYear.js';
import { wave } from './wave.js';
import { daysInYear, wrapYear, yearDayOfText } from './yearDay.js';

/**
 * Monthly normals guessed from two usual frost dates and latitude.
 *
 * Use it where a grower knows the frosts but nobody measured nearby. The smoothed minimum passes 5.45 C on both dates and peaks midway; how far it swings
 * follows from latitude and the length of the free season, the same on both sides of the equator.
 * @param latitude degrees, if known
 * @param lastFrost usual last frost, MM-DD
 * @param firstFrost usual first frost, MM-DD
 * @param swingC half of the year's swing at a station of the same country side, if there is one: it knows sea from inland, which frost dates do not tell
 * @throws RangeError where a date is no day of the year
 * Source: 5.45 C as in frostDates; the swing fitted on 203 stations (those of 83 in the world that have frosts, weighted threefold, and each fortieth of the US
 * table): mean error 2.0 C; the four among them that lie south of the equator swing 0 to 5 C less.
 */
export const climateFromFrostDates = (
  latitude: number | undefined, lastFrost: string | undefined, firstFrost: string | undefined, swingC?: number,
): Climate | undefined => {
  if (lastFrost === undefined || firstFrost === undefined) return undefined;
  const last = yearDayOfText(lastFrost);
  const freeDays = wrapYear(yearDayOfText(firstFrost) - last);
  if (freeDays < 20 || freeDays > 345) return undefined;
  const midSeason = last + freeDays / 2;
  const south = latitude === undefined ? wrapYear(midSeason + 91) < 182 : latitude < 0;
  const north = Math.abs(latitude ?? 45);
  const fitted = swingC ?? 13.75 + 0.1223 * north + 0.01662 * freeDays - 0.001376 * north * freeDays;
  const halfRangeC = Math.min(16, Math.max(4, fitted));
  const meanMinC = 5.45 - halfRangeC * Math.cos((Math.PI * freeDays) / daysInYear);
  const warmest = seasonDayOf(midSeason, south);
  return {
    ...(latitude === undefined ? {} : { latitude }),
    minC: wave(meanMinC, halfRangeC, warmest, south),
    maxC: wave(meanMinC + 10, 3 + 0.85 * halfRangeC, warmest, south),
    quality: 'frost-dates',
    plusMinusDays: 14,
    notes: ['frost-dates-fitted', ...(latitude === undefined ? ['latitude-assumed'] : [])],
  };
};

import type { Climate } from './climateShape.js';
import { wave } from './wave.js';
import { daysInYear, wrapYear, yearDayOfText } from './yearDay.js';

/**
 * Monthly normals guessed from two usual frost dates and latitude.
 *
 * Use it where a grower knows the frosts but nobody measured nearby. The smoothed minimum passes 5.45 C on both dates and peaks midway; how far it swings
 * follows from latitude and the length of the free season.
 * @param latitude degrees, if known
 * @param lastFrost usual last frost, MM-DD
 * @param firstFrost usual first frost, MM-DD
 * @throws RangeError where a date is no day of the year
 * Source: 5.45 C as in frostDates; the swing fitted on 194 stations (83 of the world weighted threefold, and each fortieth of the US table): mean error 2.0 C.
 * South of the equator the years swing about 2 C less; the fit keeps one curve for both, so that a mirrored garden has a mirrored year.
 */
export const climateFromFrostDates = (
  latitude: number | undefined, lastFrost: string | undefined, firstFrost: string | undefined,
): Climate | undefined => {
  if (lastFrost === undefined || firstFrost === undefined) return undefined;
  const last = yearDayOfText(lastFrost);
  const freeDays = wrapYear(yearDayOfText(firstFrost) - last);
  if (freeDays < 20 || freeDays > 345) return undefined;
  const warmest = wrapYear(last + freeDays / 2);
  const north = Math.abs(latitude ?? 45);
  const fitted = 13.1 + 0.0829 * north + 0.03975 * freeDays - 0.001737 * north * freeDays;
  const halfRangeC = Math.min(16, Math.max(4, fitted));
  const meanMinC = 5.45 - halfRangeC * Math.cos((Math.PI * freeDays) / daysInYear);
  return {
    ...(latitude === undefined ? {} : { latitude }),
    minC: wave(meanMinC, halfRangeC, warmest),
    maxC: wave(meanMinC + 10, 1.9 + 0.95 * halfRangeC, warmest),
    quality: 'frost-dates',
    plusMinusDays: 14,
    notes: ['frost-dates-fitted', ...(latitude === undefined ? ['latitude-assumed'] : [])],
  };
};

import { chillAfterHour, noChill } from './chill.js';
import type { Climate } from './climateShape.js';
import { climateYear } from './climateYear.js';
import { type DayForHours, hourlyTemperatures } from './hourlyTemperatures.js';
import { syntheticAnomalies } from './syntheticAnomalies.js';
import { daysInYear } from './yearDay.js';

/** Season day on which counting begins: 1 October in the north, 282 days after midwinter. */
const begins = 283;

/** Season day on which it ends: 31 March. */
const ends = 99;

/** Whether chill is counted on a season day. */
const isChillSeason = (seasonDay: number): boolean => seasonDay <= ends || seasonDay >= begins;

const replicates = 8;

/** The hours of a day, and how far each hangs on the days before and after: hours are sums of the three days' extremes, so a warmer day shifts each by its share. */
const shiftingHours = (before: DayForHours, today: DayForHours, after: DayForHours): { readonly hours: readonly number[]; readonly before: readonly number[]; readonly after: readonly number[] } => {
  const at = (day: DayForHours, degreesC: number): DayForHours => ({ ...day, minC: degreesC, maxC: degreesC });
  return { hours: hourlyTemperatures(before, today, after), before: hourlyTemperatures(at(before, 1), at(today, 0), at(after, 0)), after: hourlyTemperatures(at(before, 0), at(today, 0), at(after, 1)) };
};

/**
 * Dynamic chill portions since autumn, by season day; undefined outside the chilling season.
 *
 * Use it to tell how far a winter has got. Smooth normals alone are 17 % off, so synthetic weather is laid over them: eight winters of a fixed
 * seed, whose mean comes within 4 % at 46 sites. Chill hours and Utah units are not given from normals: they are far off there.
 * @param climate as `climateOf` gave it
 */
export const chillByDay = (climate: Climate): readonly (number | undefined)[] => {
  const place = climateYear(climate);
  const length = daysInYear - begins + ends + 1;
  const sums = new Array<number>(length).fill(0);
  if (place !== undefined) {
    const ordinary = (i: number): DayForHours => {
      const season = (begins + i - 1 + daysInYear) % daysInYear;
      return { minC: place.minC[season] ?? 0, maxC: place.maxC[season] ?? 0, daylengthH: place.daylengthH[season] ?? 12 };
    };
    const winter = Array.from({ length }, (_, i) => shiftingHours(ordinary(i), ordinary(i + 1), ordinary(i + 2)));
    for (let replicate = 0; replicate < replicates; replicate += 1) {
      const anomalies = syntheticAnomalies(replicate + 1, length + 2);
      let state = noChill;
      for (const [i, { hours, before, after }] of winter.entries()) {
        const [yesterday, today, tomorrow] = [anomalies[i]!, anomalies[i + 1]!, anomalies[i + 2]!];
        for (let hour = 0; hour < 24; hour += 1) state = chillAfterHour(state, hours[hour]! + today + before[hour]! * (yesterday - today) + after[hour]! * (tomorrow - today));
        sums[i] = sums[i]! + state.portions / replicates;
      }
    }
  }
  return Array.from({ length: daysInYear }, (_, season) =>
    place === undefined || !isChillSeason(season) ? undefined : sums[(season - begins + daysInYear) % daysInYear]);
};

/** Dynamic chill portions that an ordinary winter brings, 1 October to 31 March or the half year across; undefined where no temperatures are told. */
export const winterChill = (climate: Climate): number | undefined => chillByDay(climate)[ends];

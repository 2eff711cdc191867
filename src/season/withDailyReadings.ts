import type { SeasonTraits } from './seasonTraits.js';
import type { DailyReading } from './climateShape.js';
import type { ClimateYear } from './climateYear.js';
import { dayOf } from './day.js';
import { inGrowingYear } from './growingYear.js';
import { daylengthWeight, forcingBaseC } from './springForcing.js';
import { springDates } from './turningPoints.js';
import type { TurningPoints } from './turningPoints.js';

/**
 * Turning points of those growing years of which daily readings are given.
 *
 * Readings replace the normals on their days; before, between and after them the normals carry on.
 * @param place the year that the climate gives
 * @param traits the species' season traits
 * @param model the ordinary year
 * @param daily readings in any order
 * @throws RangeError where a date is no date of the calendar
 */
export const withDailyReadings = (
  place: ClimateYear, traits: SeasonTraits, model: TurningPoints, daily: readonly DailyReading[],
): Readonly<Record<number, TurningPoints>> => {
  if ((traits.model !== 'deciduous' && traits.model !== 'evergreen') || model.leafOut === undefined) return {};
  const years = new Map<number, number[]>();
  for (const reading of daily) {
    const { year, seasonDay } = inGrowingYear(dayOf(reading.date), place.south);
    const forcing = years.get(year) ?? [...place.forcing];
    forcing[seasonDay] = Math.max(0, (reading.minC + reading.maxC) / 2 - forcingBaseC) * daylengthWeight(place.daylengthH[seasonDay] ?? 0);
    years.set(year, forcing);
  }
  const moved: Record<number, TurningPoints> = {};
  for (const [year, forcing] of years) {
    const spring = springDates(forcing, traits);
    if (spring === undefined) continue;
    const shift = spring.leafOut - model.leafOut;
    const froms: Partial<Record<string, number>> = { 'bud-swell': spring.budSwell, 'bud-burst': spring.budBurst };
    let at = -1;
    moved[year] = {
      ...model,
      steps: model.steps.map((step) => {
        const wanted = step.half === 'autumn' ? step.from : (froms[step.phase] ?? step.from + shift);
        at = Math.max(at + 1, wanted);
        return { ...step, from: at, plusMinusDays: step.half === 'spring' ? Math.max(7, step.plusMinusDays - 3) : step.plusMinusDays };
      }),
      start: spring.budSwell,
      leafOut: spring.leafOut,
    };
  }
  return moved;
};

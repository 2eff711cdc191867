import type { Climate } from './climate.js';
import { climateYear } from './climateYear.js';
import type { ClimateYear } from './climateYear.js';
import type { Day } from './day.js';
import { frozen } from './frozen.js';
import { inGrowingYear } from './growingYear.js';
import { isUnderCover } from './isUnderCover.js';
import { rootRun } from './rootRun.js';
import type { RootRun } from './rootRun.js';
import type { SeasonTraits, Sighting, Standing } from './seasonTraits.js';
import { turningPoints } from './turningPoints.js';
import type { TurningPoints } from './turningPoints.js';
import { movedBySightings } from './movedBySightings.js';
import { withDailyReadings } from './withDailyReadings.js';

export type { Phase, SeasonTraits, Sighting, Standing } from './seasonTraits.js';

/** A tree's year at a place: the ordinary year, and those years that readings or sightings moved. Plain and frozen. */
export interface Calendar {
  readonly climate: Climate;
  readonly traits: SeasonTraits;
  readonly standing: Standing;
  /** The growing year that the calendar was asked for, named by the calendar year in which its midwinter falls. */
  readonly year: number;
  /** Undefined where the place has no known temperatures. */
  readonly climateYear: ClimateYear | undefined;
  readonly ordinary: TurningPoints | undefined;
  readonly rootRun: RootRun;
  readonly moved: Readonly<Record<number, TurningPoints>>;
  readonly sightings: readonly Sighting[];
  readonly plusMinusDays: number;
  /** Message ids. */
  readonly notes: readonly string[];
}

/**
 * The calendar of one tree at one place.
 *
 * Use it once for each tree and place, then ask `seasonOn` for any day: other years follow the ordinary year.
 * @param climate as `climateOf` gave it
 * @param traits the species' season traits
 * @param aroundDay a day in the growing year of interest
 * @param sightings phases seen on this tree, in any order; those of one year move its later turning points, those of other years calibrate the tree
 * @param standing where the tree stands; under glass and indoors the outdoor model does not hold
 * @example seasonCalendar(climateOf(where, places), { model: 'deciduous' }, dayOf('2026-03-10'))
 */
export const seasonCalendar = (
  climate: Climate, traits: SeasonTraits, aroundDay: Day, sightings: readonly Sighting[] = [], standing: Standing = 'outdoors',
): Calendar => {
  const place = climateYear(climate);
  const underCover = isUnderCover(standing);
  const model = place && turningPoints(place, traits, climate.plusMinusDays + (standing === 'cold-frame' ? 7 : 0));
  const year = inGrowingYear(aroundDay, place?.south ?? (climate.latitude ?? 1) < 0).year;
  const notes = [...climate.notes, ...(model?.notes ?? []),
    ...(underCover ? ['under-cover'] : standing === 'cold-frame' ? ['cold-frame'] : [])];
  const roots = place && rootRun(place.meanC, traits);
  // Copies: the calendar is frozen, what the caller gave is not.
  const seen = sightings.map((one) => ({ ...one })).sort((a, b) => a.day - b.day || (a.phase < b.phase ? -1 : 1));
  if (place === undefined || model === undefined || underCover || model.steps.length === 0) {
    return frozen({
      climate, traits: { ...traits }, standing, year, climateYear: place, ordinary: underCover ? undefined : model, rootRun: roots, moved: {}, sightings: seen,
      plusMinusDays: climate.plusMinusDays, notes,
    });
  }
  const read = withDailyReadings(place, traits, model, climate.daily ?? []);
  const { ordinary, moved, notes: more } = movedBySightings(model, read, seen, place.south);
  return frozen({
    climate, traits: { ...traits }, standing, year, climateYear: place, ordinary, rootRun: roots, moved, sightings: seen,
    plusMinusDays: Math.max(...ordinary.steps.map((step) => step.plusMinusDays)),
    notes: [...notes, ...more],
  });
};

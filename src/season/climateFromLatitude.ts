import type { Climate } from './climateShape.js';
import { wave } from './wave.js';

/** A month after midsummer, days since midwinter. */
const warmest = 211;

/**
 * Monthly normals guessed from latitude alone: an estimate that stands in until something better is told.
 *
 * @param latitude degrees, or undefined where it is not known: then there is no climate
 * @param elevationM height, if known
 * Source: lines fitted on 83 stations of the world (NOAA and WMO normals): annual mean 27.2 - 30.7 sin2(latitude), half range 2.75 + 0.169 per degree, mean
 * error 2.4 C and 3.3 C. One curve for both sides of the equator, though the eight stations in the south swing 3 C less either way and are 1 C colder: what makes them milder
 * is the sea, which latitude does not tell, and eight are too few for a fit of their own. Their leaf-out comes within 13 days (tests/outside/season).
 */
export const climateFromLatitude = (latitude: number | undefined, elevationM?: number): Climate | undefined => {
  if (latitude === undefined) return undefined;
  const sine = Math.sin((latitude * Math.PI) / 180);
  const meanC = 27.2 - 30.7 * sine * sine - 0.0065 * (elevationM ?? 0);
  const halfRangeC = 2.75 + 0.169 * Math.abs(latitude);
  const south = latitude < 0;
  return {
    latitude,
    minC: wave(meanC - 4.8, halfRangeC - 0.5, warmest, south),
    maxC: wave(meanC + 4.8, halfRangeC + 0.5, warmest, south),
    quality: 'latitude',
    plusMinusDays: 30,
    notes: ['latitude-only'],
  };
};

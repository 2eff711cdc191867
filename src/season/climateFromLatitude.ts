import type { Climate } from './climateShape.js';
import { wave } from './wave.js';

/**
 * Monthly normals guessed from latitude alone: an estimate that stands in until something better is told.
 *
 * @param latitude degrees, or undefined where it is not known: then there is no climate
 * @param elevationM height, if known
 * Source: lines fitted on 83 stations of the world (NOAA and WMO normals): annual mean 27.3 - 30.2 sin2(latitude), half range 2.24 + 0.172 per degree, mean
 * error 2.4 C and 3.1 C; warmest about 30 days after midsummer.
 */
export const climateFromLatitude = (latitude: number | undefined, elevationM?: number): Climate | undefined => {
  if (latitude === undefined) return undefined;
  const sine = Math.sin((latitude * Math.PI) / 180);
  const meanC = 27.3 - 30.2 * sine * sine - 0.0065 * (elevationM ?? 0);
  const halfRangeC = 2.24 + 0.172 * Math.abs(latitude);
  const warmest = latitude >= 0 ? 201 : 19;
  return {
    latitude,
    minC: wave(meanC - 4.8, halfRangeC - 0.5, warmest),
    maxC: wave(meanC + 4.8, halfRangeC + 0.5, warmest),
    quality: 'latitude',
    plusMinusDays: 30,
    notes: ['latitude-only'],
  };
};

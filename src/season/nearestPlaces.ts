import { distanceKm } from './distanceKm.js';
import type { Station } from './station.js';

/** A station and how far it is. */
export interface NearPlace { readonly station: Station; readonly km: number }

/**
 * The stations nearest to a place, nearest first.
 *
 * @param latitude degrees
 * @param longitude degrees
 * @param stations the stations to search
 * @param count how many are wanted
 */
export const nearestPlaces = (latitude: number, longitude: number, stations: readonly Station[], count: number): readonly NearPlace[] =>
  stations
    .map((station) => ({ station, km: distanceKm(latitude, longitude, station.latitude, station.longitude) }))
    .sort((a, b) => a.km - b.km || (a.station.id < b.station.id ? -1 : 1))
    .slice(0, count);

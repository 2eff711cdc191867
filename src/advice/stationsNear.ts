import { nearest } from '../knowledge/nearest.js';
import { findPlaces } from '../season/findPlaces.js';
import type { Station } from '../season/station.js';

/** What a station may be called by: its id, and its name without what stands in brackets. */
const calledBy = ({ id, name }: Station): readonly string[] => [id, name.replace(/ \(.*/, '')];

/** The ids of at most three stations that a name may mean, nearest first: those that hold its words, or else near misses. */
export const stationsNear = (name: string, stations: readonly Station[]): readonly string[] => {
  const found = findPlaces(name, stations).slice(0, 3);
  if (found.length > 0) return found.map(({ id }) => id);
  const ids = new Map(stations.flatMap((station) => calledBy(station).map((called) => [called, station.id])));
  return [...new Set(nearest(name, ids.keys()).map((called) => ids.get(called)!))];
};

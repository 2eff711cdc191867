import { climateOf } from './climate.js';
import type { Climate, Where } from './climateShape.js';
import type { Station } from './station.js';

/** More places than any collection has; beyond it the place asked for longest ago is forgotten. */
const mostPlaces = 256;

/**
 * `climateOf` that remembers: the same place gives the same object, so that what is worked out from it is worked out once.
 *
 * Use it where many proposals come from few places: keep one for each advisor.
 * @param stations the bundled stations, or none
 * @returns a function from a place to its climate; throws RangeError as `climateOf` does
 * @example const climateAt = climatesAt(places); climateAt(where) === climateAt({ ...where }) // true
 */
export const climatesAt = (stations: readonly Station[]): ((where: Where | undefined) => Climate) => {
  const kept = new Map<string, Climate>();
  return (where) => {
    const key = where === undefined ? '' : JSON.stringify(Object.entries(where).filter(([, value]) => value !== undefined).sort(([a], [b]) => (a < b ? -1 : 1)));
    const before = kept.get(key);
    const climate = before ?? climateOf(where, stations);
    kept.delete(key);
    kept.set(key, climate);
    const oldest = kept.keys().next();
    if (kept.size > mostPlaces && oldest.done !== true) kept.delete(oldest.value);
    return climate;
  };
};

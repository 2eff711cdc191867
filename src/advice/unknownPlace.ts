import { SparebudError } from '../knowledge/error.js';
import type { Station } from '../season/station.js';
import { stationsNear } from './stationsNear.js';

/** The error of a place that is no bundled station, with the stations that may be meant. */
export const unknownPlace = (place: string, stations: readonly Station[]): SparebudError => {
  const shown = place.slice(0, 80);
  const near = stationsNear(shown, stations);
  const help = stations.length === 0 ? 'this advisor was given no stations: `createAdvisor(knowledge, { places })`, with `places` of `sparebud/places`'
    : near.length === 0 ? 'look it up with `sparebud places`, or tell latitude and longitude'
      : `did you mean ${near.map((id) => `\`${id}\``).join(' or ')}? Latitude and longitude do as well`;
  return new SparebudError([{ code: 'unknown-place', path: 'where.place', message: `unknown place \`${shown}\` in \`where.place\``, found: place, accepted: near, help }]);
};

import type { Station } from './station.js';

/* A vowel with two dots is also written with an e after it: Köln, Koeln. */
const plain = (text: string): string =>
  text.normalize('NFD').replace(/\p{Diacritic}/gu, '').toLowerCase().replace(/([aou])e/g, '$1').replace(/[^\p{Letter}\p{Number}]+/gu, ' ').trim();

/**
 * Stations whose name, id or country holds every word of a query.
 *
 * Use it behind a search box; accents, capitals and whether an umlaut is spelt out do not matter. Names that begin with the query come first.
 * @param query words in any order
 * @param stations the stations to search
 * @example findPlaces('zurich', places)
 */
export const findPlaces = (query: string, stations: readonly Station[]): readonly Station[] => {
  const wanted = plain(query);
  if (wanted === '') return [];
  const words = wanted.split(' ');
  const rank = (station: Station): number => {
    const name = plain(station.name);
    if (name === wanted || station.id === query) return 0;
    if (name.startsWith(wanted)) return 1;
    const text = ` ${name} ${plain(station.id)} ${plain(station.country)}`;
    if (words.every((word) => text.includes(` ${word}`))) return 2;
    return words.every((word) => text.includes(word)) ? 3 : 4;
  };
  return stations
    .map((station) => ({ station, rank: rank(station) }))
    .filter((found) => found.rank < 4)
    .sort((a, b) => a.rank - b.rank || (a.station.id < b.station.id ? -1 : 1))
    .map((found) => found.station);
};

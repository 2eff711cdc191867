import { readFileSync } from 'node:fs';
import type { Station } from '../../src/season/station.js';

/** The stations that ship. */
export const stations = (JSON.parse(readFileSync(new URL('../../shared/places.json', import.meta.url), 'utf8')) as { readonly stations: readonly Station[] }).stations;

/** An invented garden in a mild maritime lowland, known by its usual frosts. */
export const lowland = { latitude: 51, longitude: 3.7, lastFrost: '04-20', firstFrost: '10-28' };

import { text } from './places.data.js';
import type { Station } from './station.js';

export { findPlaces } from './findPlaces.js';
export { nearestPlaces, type NearPlace } from './nearestPlaces.js';

/** The bundled stations with their monthly normals; sources and terms stand in shared/places.json. */
export const places: readonly Station[] = (JSON.parse(text) as { readonly stations: readonly Station[] }).stations;

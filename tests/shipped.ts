import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { createAdvisor } from '../src/advisor.js';
import { flatten } from '../src/knowledge/flatten.js';
import { readParts } from '../src/knowledge/read/readKnowledge.js';
import type { Station } from '../src/season/station.js';

/** The folder that this repository keeps its knowledge in. */
export const root = fileURLToPath(new URL('../', import.meta.url));

/** The shipped knowledge as it is read from YAML, with what is wrong with it. */
export const shippedRead = readParts(root);
export const shippedParts = shippedRead.parts;
export const shipped = flatten(shippedParts);

export const stations = (JSON.parse(readFileSync(`${root}shared/places.json`, 'utf8')) as { readonly stations: readonly Station[] }).stations;

export const advisor = createAdvisor(shipped, { places: stations });

import { readFileSync, writeFileSync } from 'node:fs';
import { readKnowledge } from '../knowledge/read/readKnowledge.js';
import type { Station } from '../season/station.js';
import { seasonCheckPage } from './seasonCheckPage.js';

/* `tsx src/upkeep/seasonCheckMain.ts`: writes docs/season-check.md. */
const { stations } = JSON.parse(readFileSync('shared/places.json', 'utf8')) as { readonly stations: readonly Station[] };
writeFileSync('docs/season-check.md', seasonCheckPage(readKnowledge(process.cwd()), stations, readFileSync('tests/outside/data/phenology.csv', 'utf8')));

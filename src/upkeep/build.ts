import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { saneStation } from '../season/saneStation.js';
import type { Station } from '../season/station.js';
import { readKnowledge } from '../knowledge/read/readKnowledge.js';

/* Knowledge and places as modules of plain text: quick to parse, and no file is read when the package runs. */
const root = process.cwd();
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { readonly version: string };
const module = (data: unknown): string => `/* Built from species/, rules/ and shared/ by \`npm run build\`. */\nexport const text: string = ${JSON.stringify(JSON.stringify(data))};\n`;

writeFileSync(join(root, 'src/knowledge/bundled.data.ts'), module(readKnowledge(root, version)));
const places = JSON.parse(readFileSync(join(root, 'shared/places.json'), 'utf8')) as { readonly stations: readonly Station[] };
for (const station of places.stations) {
  const faults = saneStation(station);
  if (faults.length > 0) throw new Error(`shared/places.json: ${station.id}: ${faults.join(', ')}`);
}
writeFileSync(join(root, 'src/season/places.data.ts'), module({ stations: places.stations }));

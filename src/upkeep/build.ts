import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { saneStation } from '../season/saneStation.js';
import type { Station } from '../season/station.js';
import { flatten } from '../knowledge/flatten.js';
import { readParts } from '../knowledge/read/readKnowledge.js';
import { printIssue } from '../knowledge/printIssue.js';
import { writeEditorSchemas } from './editorSchemas.js';

/* Knowledge and places as modules of plain text: quick to parse, and no file is read when the package runs. Schemas for editors in .editor/, with the ids of the day. */
const root = process.cwd();
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { readonly version: string };
const module = (data: unknown): string => `/* Built from species/, rules/ and shared/ by \`npm run build\`. */\nexport const text: string = ${JSON.stringify(JSON.stringify(data))};\n`;

const { parts, issues } = readParts(root, version);
writeEditorSchemas(root, parts);
if (issues.length > 0) {
  for (const issue of issues) process.stderr.write(printIssue(issue));
  process.exit(1);
}
writeFileSync(join(root, 'src/knowledge/bundled.data.ts'), module(flatten(parts)));
const places = JSON.parse(readFileSync(join(root, 'shared/places.json'), 'utf8')) as { readonly stations: readonly Station[] };
for (const station of places.stations) {
  const faults = saneStation(station);
  if (faults.length > 0) throw new Error(`shared/places.json: ${station.id}: ${faults.join(', ')}`);
}
writeFileSync(join(root, 'src/season/places.data.ts'), module({ stations: places.stations }));

import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { saneStation } from '../season/saneStation.js';
import type { Station } from '../season/station.js';
import { flatten } from '../knowledge/flatten.js';
import { readParts } from '../knowledge/read/readKnowledge.js';
import { printIssue } from '../knowledge/printIssue.js';
import { writeEditorSchemas } from './editorSchemas.js';
import { wordingModules } from './wording/wordingModules.js';
import { foldKnowledge } from './fold/foldKnowledge.js';
import { publishedFiles, textOf } from './fold/publishedFiles.js';

/* Knowledge and places as modules of plain text: quick to parse, and no file is read when the package runs. Schemas for editors in .editor/, with the ids of the day. */
const root = process.cwd();
const { version } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')) as { readonly version: string };
const { parts, issues, files } = readParts(root, version);
writeEditorSchemas(root, parts);
if (issues.length > 0) {
  for (const issue of issues) process.stderr.write(printIssue(issue));
  process.exit(1);
}
const published = join(root, 'src/knowledge/published');
for (const folder of ['groups', 'wording']) {
  rmSync(join(published, folder), { recursive: true, force: true });
  mkdirSync(join(published, folder));
}
const knowledge = flatten(parts);
for (const [name, text] of publishedFiles(foldKnowledge(knowledge))) writeFileSync(join(published, name), text);
for (const [language, text] of wordingModules(knowledge, files)) writeFileSync(join(published, `wording/${language}.data.ts`), text);
const places = JSON.parse(readFileSync(join(root, 'shared/places.json'), 'utf8')) as { readonly stations: readonly Station[] };
for (const station of places.stations) {
  const faults = saneStation(station);
  if (faults.length > 0) throw new Error(`shared/places.json: ${station.id}: ${faults.join(', ')}`);
}
writeFileSync(join(root, 'src/season/places.data.ts'), `/* Built from shared/places.json by \`npm run build\`. */\nexport const text: string = ${textOf({ stations: places.stations })};\n`);

import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { SparebudError } from '../../knowledge/error.js';
import { readParts } from '../../knowledge/read/readKnowledge.js';
import { writeEditorSchemas } from '../../upkeep/editorSchemas.js';
import { withoutMember } from '../../upkeep/mend/withoutMember.js';
import { newRule } from '../../upkeep/scaffold/newRule.js';
import { newSource } from '../../upkeep/scaffold/newSource.js';
import { type NewFile, newSpecies } from '../../upkeep/scaffold/newSpecies.js';

const write = (folder: string, { path, text }: NewFile): void => {
  const whole = join(folder, path);
  if (existsSync(whole)) throw new SparebudError([{ code: 'duplicate', path, message: `${path} is there already`, help: 'mend it, or name another' }]);
  mkdirSync(dirname(whole), { recursive: true });
  writeFileSync(whole, text);
  writeEditorSchemas(folder, readParts(folder).parts);
  process.stdout.write(`wrote ${path}\n`);
};

/** Writes a scaffold of each kind. */
export const runNew = {
  species: (name: string, options: { readonly parent?: string; readonly folder: string }): void => {
    const { parts, files } = readParts(options.folder);
    const made = newSpecies(name, options.parent, parts);
    write(options.folder, made);
    if (made.memberOf === undefined) return;
    const path = [...files.keys()].find((file) => file.endsWith(`/${made.memberOf!}.yaml`))!;
    writeFileSync(join(options.folder, path), withoutMember(readFileSync(join(options.folder, path), 'utf8'), made.path));
    process.stdout.write(`took it out of the members of ${path}\n`);
  },
  rule: (id: string, options: { readonly operations: readonly string[]; readonly verdict: string; readonly folder: string }): void => {
    write(options.folder, newRule(id, options.operations, options.verdict, readParts(options.folder).parts));
  },
  source: (id: string, { folder, ...told }: Readonly<Record<string, string>> & { readonly folder: string }): void => {
    const path = join(folder, 'shared/sources.yaml');
    writeFileSync(path, newSource(id, told, readFileSync(path, 'utf8')));
    writeEditorSchemas(folder, readParts(folder).parts);
    process.stdout.write(`added ${id} to shared/sources.yaml\n`);
  },
};

import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Parts } from '../knowledge/parts.js';
import { ruleSchema } from '../knowledge/schemas/ruleSchema.js';
import type { Schema } from '../knowledge/schemas/schema.js';
import { speciesSchema } from '../knowledge/schemas/speciesSchema.js';

/** Schemas for an editor, by file: as those that are published, with the ids that this folder has at the moment, so that it completes sources and parents too. */
export const editorSchemas = (parts: Parts): Readonly<Record<string, Schema>> => {
  const known = { sources: parts.sources, species: [...parts.species.keys()], parents: [...parts.species].filter(([, { rank }]) => rank !== 'taxon').map(([id]) => id), rules: [...parts.rules.keys()] };
  return { '.editor/species.schema.json': speciesSchema(parts.facts, known), '.editor/rule.schema.json': ruleSchema(parts.facts, parts.operations, known) };
};

export const writeEditorSchemas = (root: string, parts: Parts): void => {
  mkdirSync(join(root, '.editor'), { recursive: true });
  for (const [path, schema] of Object.entries(editorSchemas(parts))) writeFileSync(join(root, path), `${JSON.stringify(schema)}\n`);
};

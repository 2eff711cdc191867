import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import type { Fault } from '../knowledge/check.js';
import type { Knowledge } from '../knowledge/knowledge.js';

/** Every id of a kind that others may have stored. */
export const publishedIds = (knowledge: Knowledge): Readonly<Record<'species' | 'rules' | 'facts' | 'operations', readonly string[]>> => ({
  species: Object.keys(knowledge.species).sort(),
  rules: Object.keys(knowledge.rules).sort(),
  facts: Object.keys(knowledge.facts).sort(),
  operations: Object.keys(knowledge.operations).sort(),
});

/** Ids that shared/published.yaml lists and that are gone without an entry in shared/renames.yaml. */
export const vanishedIds = (root: string, knowledge: Knowledge): readonly Fault[] => {
  const path = join(root, 'shared/published.yaml');
  if (!existsSync(path)) return [];
  const published = parse(readFileSync(path, 'utf8')) as Readonly<Record<string, readonly string[]>>;
  const here: Readonly<Record<string, readonly string[]>> = publishedIds(knowledge);
  return Object.entries(published).flatMap(([kind, ids]) => {
    const there = new Set(here[kind] ?? []);
    return ids
      .filter((id) => !there.has(id) && !knowledge.renames.some((rename) => rename.from === id && there.has(rename.to)))
      .map((id): Fault => ({ code: 'vanished', file: 'shared/renames.yaml', at: [], path: id, message: `\`${id}\` was published among ${kind} and is gone`, help: 'add an entry { from, to, since } to shared/renames.yaml' }));
  });
};

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parse } from 'yaml';
import type { Fault } from '../knowledge/check.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { nowCalled } from '../knowledge/nowCalled.js';

/** Every id of a kind that others may have stored. Messages are those of the wording: what rules, facts, operations and phases say goes by their own ids. */
export const publishedIds = ({ species, rules, facts, operations, phases, sources, wording }: Knowledge): Readonly<Record<string, readonly string[]>> =>
  Object.fromEntries(Object.entries({ species, rules, facts, operations, phases, sources, messages: wording }).map(([kind, known]) => [kind, Object.keys(known).sort()]));

/** Ids that shared/published.yaml lists and that are gone without an entry in shared/renames.yaml. */
export const vanishedIds = (root: string, knowledge: Knowledge): readonly Fault[] => {
  const path = join(root, 'shared/published.yaml');
  if (!existsSync(path)) return [];
  const published = parse(readFileSync(path, 'utf8')) as Readonly<Record<string, readonly string[]>>;
  const here = publishedIds(knowledge);
  return Object.entries(published).flatMap(([kind, ids]) => {
    const there = new Set(here[kind] ?? []);
    const isTold = (called: string): boolean => there.has(called) || knowledge.renames.some(({ from, to }) => from === called && to === undefined);
    return ids
      .filter((id) => !isTold(nowCalled(knowledge, id)))
      .map((id): Fault => ({ code: 'vanished', file: 'shared/renames.yaml', at: [], path: id, message: `\`${id}\` was published among ${kind} and is gone`, help: 'add an entry { from, to, since } to shared/renames.yaml; without `to` where nothing takes its place' }));
  });
};

import { afterAll, expect, test } from 'vitest';
import { stringify } from 'yaml';
import { createAdvisor } from '../../src/advisor.js';
import { flatten } from '../../src/knowledge/flatten.js';
import type { Knowledge } from '../../src/knowledge/knowledge.js';
import { readKnowledge, readParts } from '../../src/knowledge/read/readKnowledge.js';
import { advisor, shipped, shippedParts, stations } from '../shipped.js';
import { mended, tinyFiles, removeTinyFolders, tinyFolder } from './tinyFolder.js';
import { tinyKnowledge } from './tinyKnowledge.js';

afterAll(removeTinyFolders);

test('the nearest level of the chain wins, and a trait says from which level it came', () => {
  const { traits } = tinyKnowledge.species['fictaria-x-nigra']!;
  expect(traits['budding.bareWood']).toMatchObject({ is: 'none', level: 'fictaria-x-nigra' });
  expect(traits['roots.maxRemoved']).toMatchObject({ is: 0.4, level: 'invented-broadleaf', sources: ['a-handbook'] });
  expect(tinyKnowledge.species['fictaria-alba']!.traits['budding.bareWood']).toMatchObject({ is: 'good', level: 'fictaria' });
});

test('what sources disagree on stays open', () => {
  expect(tinyKnowledge.species['fictaria-alba']!.traits['roots.maxRemoved']).toMatchObject({ either: [0.2, 0.4], sources: ['a-handbook', 'another-handbook'] });
});

test('a member answers with the traits of the species that names it', () => {
  expect(tinyKnowledge.species['fictaria-parva']).toMatchObject({ rank: 'member', parent: 'fictaria-alba' });
  expect(tinyKnowledge.species['fictaria-parva']!.traits).toEqual(tinyKnowledge.species['fictaria-alba']!.traits);
});

test('the hash tells other knowledge apart, and the same apart from nothing', () => {
  expect(readKnowledge(tinyFolder()).hash).toBe(tinyKnowledge.hash);
  expect(readKnowledge(tinyFolder(mended('rules/strain/weak.yaml', 'verdict: risky', 'verdict: advise-against'))).hash).not.toBe(tinyKnowledge.hash);
  expect(readKnowledge(tinyFolder(mended('species/taxa/fictaria-x-nigra.yaml', 'is: 10', 'is: 11'))).hash).not.toBe(tinyKnowledge.hash);
});

test('knowledge is frozen all the way down', () => {
  const thaw = (value: unknown): boolean => typeof value === 'object' && value !== null && (!Object.isFrozen(value) || Object.values(value).some(thaw));
  expect(thaw(shipped)).toBe(false);
});

test('knowledge written out as JSON and read again is the same, and answers the same', async () => {
  const again = JSON.parse(JSON.stringify(shipped)) as Knowledge;
  expect(again).toEqual(shipped);
  const proposal = { tree: { species: 'juniperus-chinensis', vigour: 'weak' }, operation: { op: 'repot', rootsRemoved: 0.5 }, date: '2026-04-02', where: { latitude: 51, longitude: 3.7 } };
  expect(JSON.stringify(await createAdvisor(again, { places: stations }).assess(proposal))).toBe(JSON.stringify(await advisor.assess(proposal)));
});

/* Law 7: printing and loading again is the same knowledge. */
test('files printed as YAML and read again are the same knowledge', () => {
  const { files } = readParts(tinyFolder());
  const printed = Object.fromEntries([...files].map(([path, file]) => [path, stringify(file.data)]));
  expect(Object.keys(printed).sort()).toEqual(Object.keys(tinyFiles).sort());
  expect(readKnowledge(tinyFolder(printed)).hash).toBe(tinyKnowledge.hash);
});

test('flattening twice gives the same', () => {
  expect(flatten(shippedParts)).toEqual(shipped);
});

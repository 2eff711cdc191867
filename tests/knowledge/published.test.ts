import { expect, test } from 'vitest';
import { createAdvisor } from '../../src/advisor.js';
import { knowledge } from '../../src/knowledge/bundled.js';
import { group as multiFlushPine } from '../../src/knowledge/published/groups/multi-flush-pine.data.js';
import { group as singleFlushPine } from '../../src/knowledge/published/groups/single-flush-pine.data.js';
import { knowledgeOf } from '../../src/knowledge/published/knowledgeOf.js';
import { unfold } from '../../src/knowledge/published/unfold.js';
import { noted, withNotes } from '../../src/knowledge/published/withNotes.js';
import { foldKnowledge } from '../../src/upkeep/fold/foldKnowledge.js';
import { advisor, shipped, stations } from '../shipped.js';
import { tinyKnowledge } from './tinyKnowledge.js';

const proposals = ['acer-palmatum', 'Scots pine', 'common fig', 'wisteria'].flatMap((species) =>
  ['repot', 'defoliate', 'cut-back'].map((op) => ({ tree: { species, vigour: 'strong' }, operation: { op }, date: '2026-04-10', where: { latitude: 51.1, longitude: 3.7 } })));

/** With members in order of name: two texts differ where the data does. */
const text = (value: unknown): string => JSON.stringify(value, (_, member: unknown) => (typeof member === 'object' && member !== null && !Array.isArray(member) ? Object.fromEntries(Object.entries(member).sort(([a], [b]) => (a < b ? -1 : 1))) : member));

for (const [name, whole] of [['the shipped knowledge', shipped], ['knowledge of invented trees', tinyKnowledge]] as const) {
  test(`${name}, folded for the package and unfolded with its notes, is the same to the last letter`, () => {
    /* Through text, as the package holds it. */
    const { common, groups, notes } = JSON.parse(JSON.stringify(foldKnowledge(whole))) as ReturnType<typeof foldKnowledge>;
    const again = noted(unfold(common, groups), notes);
    expect(text(again)).toBe(text(whole));
    for (const table of ['species', 'rules', 'sources', 'facts', 'operations'] as const) expect(Object.keys(again[table])).toEqual(Object.keys(whole[table]));
  });
}

test('what the package holds was built from the files as they are, and is frozen all the way down', () => {
  const { version, hash } = knowledge;
  expect(text({ ...withNotes(knowledge), version: shipped.version, hash: shipped.hash }), 'npm run build').toBe(text(shipped));
  expect(hash).toMatch(/^[0-9a-f]{16}$/);
  expect(version).toMatch(/^\d+\.\d+\.\d+$/);
  const thawed = (value: unknown): boolean => typeof value === 'object' && value !== null && (!Object.isFrozen(value) || Object.values(value).some(thawed));
  expect(thawed(knowledge)).toBe(false);
  expect(thawed(withNotes(knowledge))).toBe(false);
});

test('no answer needs notes or examples', async () => {
  const lean = createAdvisor({ ...knowledge, version: shipped.version, hash: shipped.hash }, { places: stations });
  for (const proposal of proposals) expect(JSON.stringify(await lean.assess(proposal))).toBe(JSON.stringify(await advisor.assess(proposal)));
});

test('one group of species alone answers about its own as all do, knows no others, and says that it is not all', async () => {
  const pines = knowledgeOf(singleFlushPine);
  expect(Object.values(pines.species).map(({ rank }) => rank)).toContain('taxon');
  expect(pines.hash).toMatch(/^[0-9a-f]{16}$/);
  const own = createAdvisor(pines, { places: stations });
  const whole = createAdvisor(knowledge, { places: stations });
  const proposal = { ...proposals[3]!, tree: { species: 'Scots pine' } };
  const { basis: partBasis, ...part } = await own.assess(proposal);
  const { basis, ...all } = await whole.assess(proposal);
  expect(part).toEqual(all);
  expect(partBasis.knowledge).not.toBe(basis.knowledge);
  expect(partBasis).toEqual({ ...basis, knowledge: partBasis.knowledge });
  await expect(own.assess({ ...proposal, tree: { species: 'acer-palmatum' } })).rejects.toThrow('unknown species');
});

test('groups are put together in whatever order they are named', () => {
  const one = knowledgeOf(singleFlushPine, multiFlushPine);
  expect(new Set([one, knowledge, knowledgeOf(singleFlushPine), knowledgeOf(multiFlushPine)].map(({ hash }) => hash.slice(0, 7))).size).toBe(4);
  expect(JSON.stringify(knowledgeOf(multiFlushPine, singleFlushPine))).toBe(JSON.stringify(one));
});

import { execFileSync } from 'node:child_process';
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { createAdvisor } from '../../src/advisor.js';
import type { Knowledge, Rule } from '../../src/knowledge/knowledge.js';
import { byRule, bySpecies } from '../../src/upkeep/shift/groupShift.js';
import { knowledgeAt } from '../../src/upkeep/shift/knowledgeAt.js';
import { shiftBetween } from '../../src/upkeep/shift/shiftBetween.js';
import { shiftJson, shiftMarkdown, shiftText } from '../../src/upkeep/shift/shiftText.js';
import { removeTinyFolders, tinyFolder } from '../knowledge/tinyFolder.js';
import { advisor, root, shipped, stations } from '../shipped.js';

afterAll(removeTinyFolders);

/* Ordinary proposals, of which a change to the knowledge shows: ten species, four operations, each month, each vigour in turn. */
const species = ['acer-palmatum', 'carpinus-betulus', 'ficus-microcarpa', 'fagus-sylvatica', 'juniperus-chinensis', 'malus-halliana', 'picea-abies', 'pinus-sylvestris', 'pinus-thunbergii', 'ulmus-parvifolia'];
const works = [{ op: 'repot', rootsRemoved: 0.3 }, { op: 'cut-back', foliageShare: 0.2 }, { op: 'candle-cut', shareRemoved: 0.5 }, { op: 'pinch', shareRemoved: 0.3 }];
const chosen = species.flatMap((id, i) => works.flatMap((operation, j) => Array.from({ length: 12 }, (_, month) => ({
  tree: { species: id, vigour: (['weak', 'steady', 'strong'] as const)[(i + j + month) % 3]! }, operation, date: `2026-${String(month + 1).padStart(2, '0')}-15`, where: { place: 'malmo-sweden' },
}))));

const withRule = (id: string, change: Partial<Rule>): Knowledge => ({ ...shipped, rules: { ...shipped.rules, [id]: { ...shipped.rules[id]!, ...change } } });
const withTrait = (species: string, trait: string, is: number): Knowledge =>
  ({ ...shipped, species: { ...shipped.species, [species]: { ...shipped.species[species]!, traits: { ...shipped.species[species]!.traits, [trait]: { ...shipped.species[species]!.traits[trait]!, is } } } } });
const without = (id: string): Knowledge => ({ ...shipped, rules: Object.fromEntries(Object.entries(shipped.rules).filter(([other]) => other !== id)) });

const changes: readonly (readonly [string, Knowledge])[] = [
  ['a rule turned milder', withRule('candles/none-here', { verdict: 'risky' })],
  ['a rule that holds for fewer', withRule('candles/none-here', { when: [...shipped.rules['candles/none-here']!.when, { 'tree.vigour': 'strong' }] })],
  ['a rule taken away', without('roots/out-of-window')],
  ['a trait of one species', withTrait('acer-palmatum', 'roots.maxRemoved', 0.05)],
  ['a factor that facts are worked out with', { ...shipped, growing: { ...shipped.growing, tipsToFoliage: Object.fromEntries(Object.entries(shipped.growing.tipsToFoliage).map(([id, share]) => [id, share * 3])) } }],
  ['a factor and a rule at once', { ...withRule('candles/none-here', { verdict: 'risky' }), growing: { ...shipped.growing, tipsToFoliage: Object.fromEntries(Object.entries(shipped.growing.tipsToFoliage).map(([id, share]) => [id, share * 3])) } }],
  ['what is taken for granted', { ...shipped, facts: { ...shipped.facts, 'tree.health': { ...shipped.facts['tree.health']!, assume: { default: 'ailing' } } } }],
];

const asShipped = Promise.all(chosen.map(async (proposal) => await advisor.verdict(proposal)));

describe('what shift finds is what asking every proposal of both states would find', () => {
  test.each(changes)('%s', async (_, other) => {
    const after = createAdvisor(other, { places: stations });
    const plainly: unknown[] = [];
    for (const [i, proposal] of chosen.entries()) {
      const [was, is] = [(await asShipped)[i]!, await after.verdict(proposal)];
      if (was.verdict !== is.verdict || was.range.join() !== is.range.join()) plainly.push([proposal, was.verdict, is.verdict, was.range, is.range]);
    }
    const { shifted } = await shiftBetween(shipped, other, stations, chosen);
    expect(plainly.length).toBeGreaterThan(0);
    expect(shifted.map(({ proposal, before, after }) => [proposal, before.verdict, after.verdict, before.range, after.range])).toEqual(plainly);
  }, 60_000);

  test('reworded rules change no answer', async () => {
    const { shifted, rules } = await shiftBetween(shipped, withRule('strain/weak-tree', { title: 'Said otherwise', because: 'Said otherwise.' }), stations, chosen);
    expect({ shifted, rules }).toEqual({ shifted: [], rules: [] });
  });

  test('a species that is new is told apart from answers that change', async () => {
    const before: Knowledge = { ...shipped, species: Object.fromEntries(Object.entries(shipped.species).filter(([id]) => id !== 'acer-palmatum')) };
    const of = chosen.filter((proposal) => proposal.tree.species === 'acer-palmatum').length;
    expect(await shiftBetween(before, shipped, stations, chosen)).toMatchObject({ shifted: [], newly: { 'acer-palmatum': of }, noLonger: {} });
  });
});

describe('what changes is told', () => {
  const told = shiftBetween(shipped, without('candles/none-here'), stations, chosen);

  test('by rule and by species, with examples before and after', async () => {
    const shift = await told;
    const [rule] = byRule(shift);
    expect(rule).toMatchObject({ id: 'candles/none-here', answers: shift.shifted.length });
    expect(rule!.examples.length).toBeGreaterThan(1);
    expect(new Set(rule!.examples.map(({ species }) => species)).size).toBe(rule!.examples.length);
    expect(bySpecies(shift).reduce((sum, { answers }) => sum + answers, 0)).toBe(shift.shifted.length);
  });

  test('as text, as Markdown and as JSON', async () => {
    const shift = await told;
    expect(shiftText(shift, 'main')).toMatch(/^against main: \d+ of \d+ answers change/);
    expect(shiftText(shift, 'main')).toMatch(/before {2}advise-against[^]*candles\/none-here: certainly advise-against -> does not fire/);
    expect(shiftMarkdown(shift, 'main')).toMatch(/^\| `candles\/none-here` \| \d+ \| advise-against \| \S.* \| \S+ \d/m);
    expect(JSON.parse(shiftJson(shift, 'main'))).toMatchObject({ against: 'main', proposals: chosen.length, changed: shift.shifted.length, rules: ['candles/none-here'] });
  });
});

describe('knowledge as it stood at a revision', () => {
  test('is read from git, and the folder keeps what was changed since', () => {
    const folder = tinyFolder();
    const git = (...words: readonly string[]): string => execFileSync('git', ['-c', 'user.name=An invented person', '-c', 'user.email=nobody@sparebud.example', ...words], { cwd: folder, encoding: 'utf8' });
    git('init', '--quiet');
    git('add', '.');
    git('commit', '--quiet', '--message', 'As it was');
    const path = join(folder, 'rules/strain/weak.yaml');
    mkdirSync(join(folder, 'rules/strain'), { recursive: true });
    writeFileSync(path, '');
    expect(knowledgeAt(folder, 'HEAD').rules['strain/weak']).toMatchObject({ verdict: 'risky', title: 'A weak tree is spared' });
    expect(git('status', '--porcelain').trim()).toBe('M rules/strain/weak.yaml');
  });

  test('that git does not know is refused in words', () => {
    expect(() => knowledgeAt(root, 'no-such-revision')).toThrow(/git cannot do `git read-tree/);
  });
});

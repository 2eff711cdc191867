import { describe, expect, test } from 'vitest';
import type { Knowledge } from '../../src/knowledge/knowledge.js';
import { coverOver } from '../../src/upkeep/cover/coverOver.js';
import { coverText } from '../../src/upkeep/cover/coverText.js';
import { tinyKnowledge as tiny } from '../knowledge/tinyKnowledge.js';

const repot = (rootsRemoved: number, tree: Readonly<Record<string, unknown>> = {}): unknown => ({ tree: { species: 'fictaria-x-nigra', vigour: 'steady', phase: 'dormant', ...tree }, operation: { op: 'repot', rootsRemoved } });

describe('where the rules speak', () => {
  test('a cell in which no rule speaks, and one in which rules speak only possibly', async () => {
    const { cells } = await coverOver(tiny, [], [repot(0.1), repot(0.2), { tree: { species: 'fictaria-alba', vigour: 'steady', phase: 'bud-swell' }, operation: { op: 'repot', rootsRemoved: 0.3 } }]);
    expect(cells).toEqual([
      { operation: 'repot', group: 'invented-broadleaf', phase: 'dormant', asked: 2, silent: 2, onlyPossibly: 0 },
      /* Sources disagree whether it bears to lose that much. */
      { operation: 'repot', group: 'invented-broadleaf', phase: 'bud-swell', asked: 1, silent: 0, onlyPossibly: 1 },
    ]);
  });

  test('a rule that never fires', async () => {
    const { never } = await coverOver(tiny, [], [repot(0.1), repot(0.9)]);
    expect(never).toEqual({ 'cut/bare-wood': 0, 'strain/weak': 0 });
  });

  test('a rule that fires only beside a worse one never decides; once it fires alone it does', async () => {
    const beside = [repot(0.9, { vigour: 'weak' })];
    expect((await coverOver(tiny, [], beside)).shadowed).toEqual([{ rule: 'strain/weak', fires: 1, by: { 'roots/too-many': 1 } }]);
    expect((await coverOver(tiny, [], [...beside, repot(0.1, { vigour: 'weak' })])).shadowed).toEqual([]);
  });

  test('a rule that another covers never decides, though both are as bad', async () => {
    const rules = { ...tiny.rules, 'strain/weak': { ...tiny.rules['strain/weak']!, verdict: 'advise-against' as const }, 'roots/too-many': { ...tiny.rules['roots/too-many']!, covers: ['strain/weak'] } };
    const { shadowed } = await coverOver({ ...tiny, rules }, [], [repot(0.9, { vigour: 'weak' })]);
    expect(shadowed.map(({ rule }) => rule)).toEqual(['strain/weak']);
  });

  test('a threshold that no example stands at, on a trait too', async () => {
    const when = [{ 'species.growth.minNightC': { above: 5 } }];
    const knowledge: Knowledge = { ...tiny, rules: { ...tiny.rules, 'strain/weak': { ...tiny.rules['strain/weak']!, when, examples: [{ given: { species: 'fictaria-x-nigra' }, fires: 'certainly' }] } } };
    const { untouched } = await coverOver(knowledge, [], []);
    expect(untouched).toEqual([{ rule: 'strain/weak', fact: 'species.growth.minNightC', limit: '5', missing: ['below', 'at'] }]);
  });

  test('is printed with each of these', async () => {
    const text = coverText(await coverOver(tiny, [], [repot(0.1), repot(0.9, { vigour: 'weak' })]));
    expect(text).toMatch(/^2 proposals, 1 cells/);
    expect(text).toMatch(/rules that never fire for certain: 1\n {2}cut\/bare-wood/);
    expect(text).toMatch(/rules that fire and never decide: 1\n {2}strain\/weak .* fires 1; beside roots\/too-many 1/);
  });
});

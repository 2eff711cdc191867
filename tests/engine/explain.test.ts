import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.js';
import { type Ground, groundsOf } from '../../src/engine/explain.js';
import { newFolds, specialise } from '../../src/engine/specialise.js';
import { type FactValue, known, unknown } from '../../src/facts/factValue.js';
import type { WrittenCondition } from '../../src/knowledge/knowledge.js';
import { tinyKnowledge } from '../knowledge/tinyKnowledge.js';

const grounds = async (when: readonly WrittenCondition[], facts: Readonly<Record<string, FactValue>>, unless: readonly { readonly when: readonly WrittenCondition[] }[] = []): Promise<readonly Ground[]> => {
  const residual = await specialise({ id: 'r', when, unless }, 'repot', tinyKnowledge.species['fictaria-x-nigra']!.traits, tinyKnowledge, newFolds());
  const [fired] = await evaluate([residual!], (id) => facts[id] ?? unknown());
  return groundsOf(fired!);
};

test('a finding names each fact that it stands on, in the order of the file, with the limit that was passed', async () => {
  expect(await grounds([{ 'roots.shareRemoved': { above: 0.3 } }, { 'tree.vigour': ['weak', 'steady'] }], { 'roots.shareRemoved': known(0.5, 'given'), 'tree.vigour': known('weak', 'given') }))
    .toEqual([{ fact: 'roots.shareRemoved', limit: { above: 0.3 } }, { fact: 'tree.vigour', limit: { in: ['weak', 'steady'] } }]);
});

test('a trait that was decided beforehand is named too', async () => {
  expect(await grounds([{ 'species.budding.bareWood': 'none' }, { 'tree.vigour': 'weak' }], { 'tree.vigour': known('weak', 'given') }))
    .toEqual([{ fact: 'species.budding.bareWood', limit: { is: 'none' } }, { fact: 'tree.vigour', limit: { is: 'weak' } }]);
});

test('of several that would do, the one that holds is named', async () => {
  const when = [{ any: [{ 'tree.vigour': 'weak' }, { 'roots.shareRemoved': { above: 0.3 } }] }];
  expect(await grounds(when, { 'tree.vigour': known('strong', 'given'), 'roots.shareRemoved': known(0.5, 'given') })).toEqual([{ fact: 'roots.shareRemoved', limit: { above: 0.3 } }]);
  expect(await grounds(when, { 'tree.vigour': known('weak', 'given'), 'roots.shareRemoved': known(0.5, 'given') })).toEqual([{ fact: 'tree.vigour', limit: { is: 'weak' } }]);
});

test('a reason that did not lift the rule is left out', async () => {
  expect(await grounds([{ 'tree.vigour': 'weak' }], { 'tree.vigour': known('weak', 'given'), 'season.phase': known('dormant', 'given') }, [{ when: [{ 'season.phase': 'bud-swell' }] }]))
    .toEqual([{ fact: 'tree.vigour', limit: { is: 'weak' } }]);
});

test('each comparison is shown by its word', async () => {
  const shown = async (operand: unknown, value: number): Promise<unknown> => (await grounds([{ 'roots.shareRemoved': operand }], { 'roots.shareRemoved': known(value, 'given') }))[0]?.limit;
  expect(await shown({ below: 0.3 }, 0.1)).toEqual({ below: 0.3 });
  expect(await shown({ atLeast: 0.3 }, 0.3)).toEqual({ atLeast: 0.3 });
  expect(await shown({ atMost: 0.3 }, 0.3)).toEqual({ atMost: 0.3 });
  expect((await grounds([{ 'tree.vigour': { not: 'weak' } }], { 'tree.vigour': known('strong', 'given') }))[0]?.limit).toEqual({ not: 'weak' });
});

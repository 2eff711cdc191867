import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.js';
import { type Traits, newFolds, specialise } from '../../src/engine/specialise.js';
import { type FactValue, known, unknown } from '../../src/facts/factValue.js';
import type { Trait, Value, WrittenCondition } from '../../src/knowledge/knowledge.js';
import { tinyKnowledge } from '../knowledge/tinyKnowledge.js';

interface Written {
  readonly id: string;
  readonly when: readonly WrittenCondition[];
  readonly unless?: readonly { readonly when: readonly WrittenCondition[] }[];
}

const trait = (is: Value): Trait => ({ is, sources: [], level: 'test' });
const traits = tinyKnowledge.species['fictaria-x-nigra']!.traits;

const residualOf = async (rule: Written, own: Traits = traits, operation = 'repot'): ReturnType<typeof specialise> => await specialise(rule, operation, own, tinyKnowledge, newFolds());

const fires = async (rule: Written, facts: Readonly<Record<string, FactValue>>, own: Traits = traits): Promise<'certainly' | 'possibly' | 'never'> => {
  const residual = await residualOf(rule, own);
  return residual === undefined ? 'never' : ((await evaluate([residual], (id) => facts[id] ?? unknown()))[0]?.fires ?? 'never');
};

describe('once the species is known', () => {
  test('a rule that turns on another trait than the species has is gone', async () => {
    expect(await residualOf({ id: 'r', when: [{ 'species.budding.bareWood': 'good' }, { 'tree.vigour': 'weak' }] })).toBeUndefined();
  });

  test('a trait that holds is taken out, and only what is left is asked', async () => {
    const residual = await residualOf({ id: 'r', when: [{ 'species.budding.bareWood': 'none' }, { 'tree.vigour': 'weak' }] });
    expect(residual?.table?.buckets.map((each) => each.fact)).toEqual(['tree.vigour']);
  });

  test('a rule of traits alone needs no table: it always fires', async () => {
    const residual = await residualOf({ id: 'r', when: [{ 'species.budding.bareWood': 'none' }] });
    expect(residual).toBeDefined();
    expect(residual!.table).toBeUndefined();
  });

  test('a limit that is a trait becomes its number, with factor and margin', async () => {
    const rule: Written = { id: 'r', when: [{ 'roots.shareRemoved': { above: { trait: 'roots.maxRemoved', times: 0.5, plus: 0.1 } } }] };
    const own = { 'roots.maxRemoved': trait(0.4) };
    expect(await fires(rule, { 'roots.shareRemoved': known(0.3, 'given') }, own)).toBe('never');
    expect(await fires(rule, { 'roots.shareRemoved': known(0.31, 'given') }, own)).toBe('certainly');
  });

  test('a limit that is a figure of the operation becomes its number', async () => {
    const rule: Written = { id: 'r', when: [{ 'season.rootDaysLeft': { below: { operation: 'daysNeeded' } } }] };
    expect(await fires(rule, { 'season.rootDaysLeft': known(44, 'season') })).toBe('certainly');
    expect(await fires(rule, { 'season.rootDaysLeft': known(45, 'season') })).toBe('never');
    expect(await residualOf(rule, traits, 'cut-back')).toBeUndefined();
  });

  test('species that share what a rule comes to share its table', async () => {
    const folds = newFolds();
    const rule: Written = { id: 'r', when: [{ 'tree.vigour': 'weak' }, { 'species.form.leafHabit': 'deciduous' }] };
    const one = await specialise(rule, 'repot', tinyKnowledge.species['fictaria-alba']!.traits, tinyKnowledge, folds);
    const other = await specialise(rule, 'repot', tinyKnowledge.species['fictaria-x-nigra']!.traits, tinyKnowledge, folds);
    expect(one?.table).toBe(other?.table);
  });
});

describe('where sources disagree on a trait', () => {
  const disputed: Traits = { 'budding.bareWood': { either: ['fair', 'none'], sources: ['a', 'b'], level: 'test' }, 'roots.maxRemoved': { either: [0.2, 0.4], sources: ['a', 'b'], level: 'test' } };

  test('a rule on which they differ fires possibly, and the trait is named', async () => {
    const rule: Written = { id: 'r', when: [{ 'species.budding.bareWood': 'none' }] };
    const residual = await residualOf(rule, disputed);
    expect(residual?.disputed).toEqual(['species.budding.bareWood']);
    expect((await evaluate([residual!], () => unknown(['fair', 'none'])))[0]?.fires).toBe('possibly');
  });

  test('a rule on which all of them agree fires for certain', async () => {
    expect((await residualOf({ id: 'r', when: [{ 'species.budding.bareWood': { not: 'good' } }] }, disputed))?.disputed).toEqual([]);
  });

  test('a limit on which they differ is certain only past the worse of them', async () => {
    const rule: Written = { id: 'r', when: [{ 'roots.shareRemoved': { above: { trait: 'roots.maxRemoved' } } }] };
    expect(await fires(rule, { 'roots.shareRemoved': known(0.5, 'given') }, disputed)).toBe('certainly');
    expect(await fires(rule, { 'roots.shareRemoved': known(0.3, 'given') }, disputed)).toBe('possibly');
    expect(await fires(rule, { 'roots.shareRemoved': known(0.2, 'given') }, disputed)).toBe('never');
  });
});

describe('a trait that a species does not have', () => {
  const without: Traits = { 'budding.bareWood': trait('none') };

  test('does not hold in a condition', async () => {
    expect(await residualOf({ id: 'r', when: [{ 'species.growth.minNightC': { above: 5 } }] }, without)).toBeUndefined();
    expect(await residualOf({ id: 'r', when: [{ 'season.nightC': { below: { trait: 'growth.minNightC' } } }] }, without)).toBeUndefined();
  });

  test('lifts no rule, since the reason to lift it does not hold', async () => {
    const rule: Written = { id: 'r', when: [{ 'species.budding.bareWood': 'none' }], unless: [{ when: [{ 'species.growth.minNightC': { above: 5 } }] }] };
    expect(await fires(rule, {}, without)).toBe('certainly');
    expect(await fires(rule, {}, { ...without, 'growth.minNightC': trait(10) })).toBe('never');
    expect(await fires(rule, {}, { ...without, 'growth.minNightC': trait(3) })).toBe('certainly');
  });
});

describe('what is not known', () => {
  test('makes a rule fire possibly', async () => {
    expect(await fires({ id: 'r', when: [{ 'tree.vigour': 'weak' }] }, {})).toBe('possibly');
    expect(await fires({ id: 'r', when: [{ 'tree.vigour': 'weak' }] }, { 'tree.vigour': unknown(['strong', 'steady']) })).toBe('never');
  });

  test('is taken not to lift a rule where it stands in `unless` alone', async () => {
    const rule: Written = { id: 'r', when: [{ 'tree.vigour': 'weak' }], unless: [{ when: [{ 'season.phase': 'bud-swell' }] }] };
    expect(await fires(rule, { 'tree.vigour': known('weak', 'given') })).toBe('certainly');
    expect(await fires(rule, { 'tree.vigour': known('weak', 'given'), 'season.phase': known('bud-swell', 'given') })).toBe('never');
  });

  test('leaves a rule open where it stands in `when` and in `unless`', async () => {
    const rule: Written = { id: 'r', when: [{ 'season.phase': { not: 'dormant' } }], unless: [{ when: [{ 'season.phase': 'bud-swell' }] }] };
    expect(await fires(rule, { 'season.phase': unknown(['bud-swell', 'extending']) })).toBe('possibly');
    expect(await fires(rule, { 'season.phase': known('extending', 'given') })).toBe('certainly');
  });

  test('an estimate counts, but is not firm where its sure bounds would not settle it', async () => {
    const residual = (await residualOf({ id: 'r', when: [{ 'roots.shareRemoved': { above: 0.3 } }] }))!;
    const estimated = (among: { atLeast: number; atMost: number }): FactValue => ({ state: 'estimated', value: 0.5, among, from: 'estimated' });
    expect((await evaluate([residual], () => estimated({ atLeast: 0, atMost: 1 })))[0]).toMatchObject({ fires: 'certainly', firm: false });
    expect((await evaluate([residual], () => estimated({ atLeast: 0.4, atMost: 1 })))[0]).toMatchObject({ fires: 'certainly', firm: true });
  });
});

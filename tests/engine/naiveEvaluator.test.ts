import { expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.js';
import { testsOf } from '../../src/engine/condition.js';
import { ruleCondition } from '../../src/engine/ruleCondition.js';
import { newFolds, type Residual, specialise } from '../../src/engine/specialise.js';
import type { FactValue } from '../../src/facts/factValue.js';
import type { FactWord, Rule, Value } from '../../src/knowledge/knowledge.js';
import { shipped } from '../shipped.js';
import { cases, patience } from '../laws/cases.js';
import { type MayBe, naivelyFires } from './naiveEvaluator.js';

/* Law 6: the engine (specialised, tabled, with kept cells) says what a naive reading of the YAML says. */

/** Numbers from a seed, the same on every run (mulberry32, Ettinger, public domain). */
const randomFrom = (seed: number): (() => number) => {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
};

const random = randomFrom(20260412);
const pick = <Entry>(entries: readonly Entry[]): Entry => entries[Math.floor(random() * entries.length)]!;
const chance = (share: number): boolean => random() < share;

const rules = Object.values(shipped.rules);
const species = Object.values(shipped.species).filter((each) => each.rank !== 'member');

/** Numbers that rules name for each fact: where answers turn. */
const edges = new Map<string, Set<number>>();
for (const rule of rules) {
  for (const { fact, limit } of testsOf(ruleCondition(rule))) {
    const at = edges.get(fact) ?? new Set<number>();
    edges.set(fact, at);
    if ('is' in limit && typeof limit.is === 'number') at.add(limit.is);
    for (const each of species.slice(0, 40)) {
      const trait = 'trait' in limit ? each.traits[limit.trait]?.is : undefined;
      if ('trait' in limit && typeof trait === 'number') at.add(Math.round((trait * limit.times + limit.plus) * 1e9) / 1e9);
    }
  }
}

const numberFor = (word: FactWord): number => {
  const [least, most] = word.bounds!;
  const near = pick([...(edges.get(word.id) ?? [0])]) + pick([0, 0, 0.5, -0.5, 1, -1]);
  const drawn = chance(0.75) && Number.isFinite(near) ? near : least + random() * Math.min(most - least, 400);
  const held = Math.min(most, Math.max(least, drawn));
  return word.whole === true ? Math.round(held) : held;
};

interface Drawn {
  readonly fact: FactValue;
  readonly mayBe: MayBe;
}

const drawn = (word: FactWord): Drawn => {
  const knownShare = 0.8;
  switch (word.type) {
    case 'number': {
      const whole = word.whole === true;
      const [least, most] = word.bounds!;
      if (chance(knownShare)) {
        const value = numberFor(word);
        return { fact: { state: 'known', value, from: 'given' }, mayBe: { values: [value] } };
      }
      if (chance(0.5)) return { fact: { state: 'unknown', from: 'unknown' }, mayBe: { least, most, whole } };
      const [a, b] = [numberFor(word), numberFor(word)].sort((x, y) => x - y) as [number, number];
      if (chance(0.5)) return { fact: { state: 'unknown', among: { atLeast: a, atMost: b }, from: 'unknown' }, mayBe: { least: a, most: b, whole } };
      return { fact: { state: 'estimated', value: a, among: { atLeast: a, atMost: b }, from: 'season' }, mayBe: { values: [a] } };
    }
    case 'text': {
      if (!chance(knownShare)) return { fact: { state: 'unknown', from: 'unknown' }, mayBe: 'anything' };
      const value = pick(['US', 'US-CA', 'none', 'GB', 'CA-SK']);
      return { fact: { state: 'known', value, from: 'given' }, mayBe: { values: [value] } };
    }
    case 'list': {
      const members = word.values ?? shipped.facts[word.of ?? '']?.values ?? [];
      const list = (): readonly string[] => members.filter(() => chance(0.3));
      if (chance(knownShare)) {
        const value = list();
        return { fact: { state: 'known', value, from: 'worked-out' }, mayBe: { values: [value] } };
      }
      if (chance(0.5)) return { fact: { state: 'unknown', from: 'unknown' }, mayBe: 'anything' };
      const among = [[], list()];
      return { fact: { state: 'unknown', among: among as unknown as readonly Value[], from: 'unknown' }, mayBe: { values: among } };
    }
    default: {
      const all: readonly Value[] = word.type === 'boolean' ? [true, false] : word.values!;
      if (chance(knownShare)) {
        const value = pick(all);
        return { fact: { state: chance(0.9) ? 'known' : 'assumed', value, from: 'given' }, mayBe: { values: [value] } };
      }
      const among = all.filter(() => chance(0.5));
      const values = among.length === 0 || chance(0.4) ? all : among;
      if (chance(0.2)) return { fact: { state: 'estimated', value: values[0]!, among: values, from: 'season' }, mayBe: { values: [values[0]!] } };
      return { fact: values === all && chance(0.5) ? { state: 'unknown', from: 'unknown' } : { state: 'unknown', among: values, from: 'unknown' }, mayBe: { values } };
    }
  }
};

const words = Object.values(shipped.facts).filter((word) => !word.id.startsWith('species.') && !['range', 'records'].includes(word.type));

test('on 20,000 random sets of facts the engine and a naive reading of the rules say the same', async () => {
  const folds = newFolds();
  const made = new Map<string, Promise<Residual<Rule> | undefined>>();
  const mismatches: string[] = [];
  const said = { certainly: 0, possibly: 0, never: 0 };
  const fired = new Set<string>();
  for (let set = 0; set < cases(20_000); set++) {
    const { id, traits } = pick(species);
    const facts = new Map(words.map((word) => [word.id, drawn(word)]));
    const operation = pick(Object.keys(shipped.operations));
    const naming = rules.filter((rule) => rule.operations === 'all' || rule.operations.includes(operation));
    for (let i = 0; i < 12 && naming.length > 0; i++) {
      const rule = pick(naming);
      const key = `${rule.id} ${operation} ${id}`;
      made.set(key, made.get(key) ?? specialise(rule, operation, traits, shipped, folds));
      const residual = await made.get(key);
      const read = (fact: string): FactValue => {
        const trait = fact.startsWith('species.') ? traits[fact.slice('species.'.length)] : undefined;
        if (trait?.either !== undefined) return { state: 'unknown', among: trait.either, from: 'taxon' };
        return facts.get(fact)?.fact ?? { state: 'unknown', from: 'unknown' };
      };
      const engine = residual === undefined ? 'never' : ((await evaluate([residual], read))[0]?.fires ?? 'never');
      const naive = naivelyFires(rule, { knowledge: shipped, operation, traits, mayBe: (fact) => facts.get(fact)!.mayBe });
      said[naive] += 1;
      if (naive === 'certainly') fired.add(rule.id);
      if (engine !== naive && mismatches.length < 10) {
        const looked = testsOf(ruleCondition(rule)).map(({ fact }) => `${fact}=${JSON.stringify(fact.startsWith('species.') ? traits[fact.slice(8)]?.is ?? traits[fact.slice(8)]?.either : facts.get(fact)?.fact)}`);
        mismatches.push(`${rule.id} for ${operation} of ${id}: engine ${engine}, naive ${naive}; ${looked.join(' ')}`);
      }
    }
  }
  expect(mismatches).toEqual([]);
  /* The comparison is worth something only if rules fire, may fire and do not fire, and most rules do so at least once. */
  for (const count of Object.values(said)) expect(count).toBeGreaterThan(cases(20_000) / 20);
  expect(fired.size).toBeGreaterThan(rules.length / 2);
}, patience(600_000));

test('an estimate that would settle a rule is not firm where its sure bounds would not', async () => {
  const counting = rules.filter((each) => testsOf(ruleCondition(each)).some((one) => one.fact === 'season.growingDaysLeft'));
  expect(counting.length).toBeGreaterThan(5);
  const folds = newFolds();
  let firm = 0;
  let loose = 0;
  for (let set = 0; set < 3_000; set++) {
    const { traits } = pick(species);
    const rule = pick(counting);
    const operation = rule.operations === 'all' ? 'repot' : rule.operations[0]!;
    const residual = await specialise(rule, operation, traits, shipped, folds);
    if (residual === undefined) continue;
    const facts = new Map(words.map((word) => [word.id, drawn(word)]));
    const strictly = new Map([...facts].map(([id, { fact }]) => [id, fact.state === 'estimated' ? { state: 'unknown' as const, among: fact.among!, from: fact.from } : fact]));
    const [usual] = await evaluate([residual], (id) => facts.get(id)?.fact ?? { state: 'unknown', from: 'unknown' });
    if (usual?.fires !== 'certainly') continue;
    const [strict] = await evaluate([residual], (id) => strictly.get(id) ?? { state: 'unknown', from: 'unknown' });
    expect(usual.firm).toBe(strict?.fires === 'certainly');
    if (usual.firm) firm += 1;
    else loose += 1;
  }
  expect(firm).toBeGreaterThan(0);
  expect(loose).toBeGreaterThan(0);
}, 120_000);

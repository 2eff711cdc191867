import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { createAdvisor } from '../../../src/advisor.js';
import { SparebudError } from '../../../src/knowledge/error.js';
import { flatten } from '../../../src/knowledge/flatten.js';
import { extendKnowledge } from '../../../src/knowledge/packs/extendKnowledge.js';
import { partsOf } from '../../../src/knowledge/packs/partsOf.js';
import { mostOf } from '../../../src/knowledge/packs/plainCopy.js';
import { wrongBy } from '../../contract/answerValidator.js';
import { shipped, stations } from '../../shipped.js';

/* An invented club, its diary and its maple. */
const pack = {
  schema: 'pack/1', namespace: 'club', version: '3',
  sources: { diary: { title: 'Diary of an invented club', from: 'practice', grade: 'practice', studied: 'container' } },
  species: { 'acer-inventum': { name: 'Acer inventum', parent: 'acer', commonNames: { en: ['invented maple'] }, traits: { 'roots.maxRemoved': { is: 0.2, source: 'club:diary' } } } },
  rules: {
    'pot/never-in-june': {
      title: 'The club never repots small trees', operations: ['repot'], verdict: 'advise-against', costs: 'tree', when: [{ 'tree.trunkDiameterMm': { below: 10 } }],
      because: 'A trunk of {tree.trunkDiameterMm} mm is too thin for {species.name}.', sources: ['club:diary'],
      examples: [{ operation: 'repot', given: { 'tree.trunkDiameterMm': 9 }, fires: 'certainly', verdict: 'advise-against' }],
    },
  },
};
const repot = { tree: { species: 'club:acer-inventum', vigour: 'strong', phase: 'bud-swell', trunk: { diameterMm: 8 } }, operation: { op: 'repot', rootsRemoved: 0.25, soilRemoved: 'some' }, date: '2026-03-20', where: { latitude: 50, longitude: 8 } } as const;
const extended = extendKnowledge(shipped, pack);
const wrongs = (given: unknown, base = shipped): readonly string[] => {
  try {
    extendKnowledge(base, given);
  } catch (cause) {
    if (cause instanceof SparebudError) return cause.issues.map(({ code, path }) => `${code} ${path}`);
    throw cause;
  }
  return [];
};
const withRule = (more: object): unknown => ({ ...pack, rules: { 'pot/never-in-june': { ...pack.rules['pot/never-in-june'], ...more } } });
const withSpecies = (more: object): unknown => ({ ...pack, species: { 'acer-inventum': { ...pack.species['acer-inventum'], ...more } } });

it('flat knowledge taken apart and put together again is the same, hash and all', () => {
  expect(flatten(partsOf(shipped))).toEqual(shipped);
});

describe('a pack', () => {
  it('adds species and rules under its namespace, and the answer says what it took from it', async () => {
    const answer = await createAdvisor(extended, { places: stations }).assess(repot);
    expect(wrongBy('assessment', answer)).toEqual([]);
    expect(answer.verdict).toBe('advise-against');
    const rule = answer.findings.find((finding) => finding.rule === 'club:pot/never-in-june')!;
    expect(rule).toMatchObject({ pack: 'club', because: { text: 'A trunk of 8 mm is too thin for invented maple.' }, sources: [{ id: 'club:diary' }] });
    const [limited] = (await createAdvisor(extended, { places: stations }).assess({ ...repot, operation: { ...repot.operation, rootsRemoved: 0.4 } })).findings.filter(({ rule: id }) => id === 'roots/far-too-many');
    expect(limited!.facts.find(({ fact }) => fact === 'roots.shareRemoved')).toMatchObject({ value: 0.4, pack: 'club' });
    expect(answer.basis.packs).toEqual([{ namespace: 'club', version: '3' }]);
    expect(answer.findings.filter(({ pack: from }) => from === undefined).every(({ rule: id }) => id in shipped.rules)).toBe(true);
  });

  it('changes the hash, and leaves the base as it was', async () => {
    expect(extended.hash).not.toBe(shipped.hash);
    expect(extendKnowledge(shipped, pack).hash).toBe(extended.hash);
    expect(extendKnowledge(shipped, { ...pack, version: '4' }).hash).not.toBe(extended.hash);
    expect(flatten(partsOf(shipped)).hash).toBe(shipped.hash);
    const tree = { ...repot.tree, species: 'acer-palmatum' };
    const [before, after] = await Promise.all([shipped, extended].map(async (knowledge) => await createAdvisor(knowledge, { places: stations }).assess({ ...repot, tree: { ...tree, trunk: { diameterMm: 40 } } })));
    expect({ ...after!, basis: { ...after!.basis, packs: undefined, knowledge: '' } }).toEqual({ ...before!, basis: { ...before!.basis, packs: undefined, knowledge: '' } });
  });

  it('says a trait otherwise for all that take it from that level, and for no other', () => {
    const other = extendKnowledge(shipped, { schema: 'pack/1', namespace: 'cold', overrides: { traits: { acer: { 'roots.killC': { is: -3, source: 'common-practice' } } } } });
    const taken = Object.values(shipped.species).filter(({ id, traits }) => other.species[id]!.traits['roots.killC']!.pack === 'cold' && traits['roots.killC'] !== undefined);
    expect(taken.length).toBeGreaterThan(1);
    for (const { id } of taken) expect(other.species[id]!.traits['roots.killC']).toMatchObject({ is: -3, level: 'acer' });
    for (const { id, traits } of Object.values(shipped.species)) if (!taken.some((one) => one.id === id)) expect(other.species[id]!.traits['roots.killC']).toEqual(traits['roots.killC']);
    expect(other.species['pinus-sylvestris']).toEqual(shipped.species['pinus-sylvestris']);
  });

  it('sets a rule in the place of another, and silences one', async () => {
    const asked = { ...repot, tree: { ...repot.tree, species: 'acer-palmatum', vigour: 'weak', trunk: { diameterMm: 40 } } } as const;
    const fired = async (overrides: object): Promise<readonly (readonly [string, string | undefined])[]> =>
      (await createAdvisor(extendKnowledge(shipped, { schema: 'pack/1', namespace: 'club', overrides }), { places: stations }).assess(asked)).findings.map(({ rule, pack: from }) => [rule, from]);
    const there = await fired({});
    expect(there).toContainEqual(['roots/weak-tree', undefined]);
    expect((await fired({ silence: ['roots/weak-tree'] })).map(([rule]) => rule)).not.toContain('roots/weak-tree');
    const { sources: _, ...rule } = pack.rules['pot/never-in-june'];
    expect(await fired({ rules: { 'roots/weak-tree': { ...rule, when: [{ 'tree.trunkDiameterMm': { below: 50 } }], sources: ['common-practice'] } } })).toContainEqual(['roots/weak-tree', 'club']);
  });

  it('can be put on another, under a namespace of its own', () => {
    const both = extendKnowledge(extended, { schema: 'pack/1', namespace: 'shed', species: { 'acer-other': { name: 'Acer aliud', parent: 'club:acer-inventum', traits: { 'roots.killC': { is: -5, source: 'club:diary' } } } } });
    expect(both.species['shed:acer-other']!.traits['roots.maxRemoved']).toMatchObject({ is: 0.2, pack: 'club', level: 'club:acer-inventum' });
    expect(both.packs!.map(({ namespace }) => namespace)).toEqual(['club', 'shed']);
    expect(wrongs(pack, extended)).toContain('duplicate namespace');
  });
});

describe('what is wrong in a pack', () => {
  it('is named with its place in the pack, near misses and all', () => {
    expect(wrongs({ ...pack, namespace: 'Club!' })).toEqual(['bad-pattern namespace']);
    expect(wrongs({ ...pack, namespase: 1 })).toEqual(['unknown-field namespase']);
    expect(wrongs(withSpecies({ parent: 'acre' }))).toEqual(['unknown-parent species.acer-inventum.parent']);
    expect(wrongs(withSpecies({ traits: { 'roots.maxRemoved': { is: 0.2, source: 'diary' } } }))).toEqual(['unknown-source species.acer-inventum.traits.roots.maxRemoved.source']);
    expect(wrongs(withSpecies({ traits: { 'roots.maxRemove': { is: 0.2, source: 'club:diary' } } }))).toEqual(['unknown-trait species.acer-inventum.traits.roots.maxRemove']);
    expect(wrongs(withSpecies({ name: 'Acer palmatum' }))).toEqual(['duplicate species.acer-inventum.name']);
    expect(wrongs(withRule({ when: [{ 'tree.trunkDiametreMm': { below: 10 } }] }))).toEqual(['unknown-fact rules.pot/never-in-june.when[0].tree.trunkDiametreMm']);
    expect(wrongs(withRule({ because: 'A {tree.trunk}.' }))).toEqual(['unknown-fact rules.pot/never-in-june.because']);
    expect(wrongs({ ...pack, species: { 'Acer X': pack.species['acer-inventum'] } })).toEqual(['bad-pattern species']);
    expect(wrongs({ ...pack, overrides: { silence: ['roots/weak-trea'] } })).toEqual(['unknown-name overrides.silence[0]']);
    expect(wrongs({ ...pack, overrides: { traits: { 'acer-palmate': {} } } })).toEqual(['unknown-species overrides.traits.acer-palmate']);
    expect(wrongs({ ...pack, overrides: { traits: { 'acer-palmatum': { 'roots.killC': { is: -5, source: 'hearsay' } } } } })).toEqual(['unknown-source overrides.traits.acer-palmatum.roots.killC.source']);
  });

  it('is a circle of parents', () => {
    const species = { one: { name: 'Unum alterum', parent: 'club:two', traits: {} }, two: { name: 'Alterum unum', parent: 'club:one', traits: {} } };
    expect(wrongs({ ...pack, species })).toEqual(expect.arrayContaining(['circle species.one.parent', 'circle species.two.parent']));
  });
});

/* Packs made to do harm, each refused with a code, long before a test's time is up. */
const nested = (levels: number): unknown => {
  let inner: unknown = { 'tree.vigour': 'weak' };
  for (let i = 0; i < levels; i++) inner = { any: [inner] };
  return inner;
};
const circle: Record<string, unknown> = { ...pack };
circle['species'] = circle;
const poisoned: Readonly<Record<string, readonly [given: () => unknown, code: string]>> = {
  'a key of the language itself': [() => JSON.parse('{ "schema": "pack/1", "namespace": "club", "species": { "__proto__": { "polluted": true } } }') as unknown, 'not-allowed'],
  'conditions nested 10,000 deep': [() => withRule({ when: [nested(10_000)] }), 'too-large'],
  'a text of 50 MB': [() => withRule({ because: 'x'.repeat(50_000_000) }), 'too-large'],
  'a name of 50 MB': [() => ({ ...pack, ['x'.repeat(50_000_000)]: 1 }), 'too-large'],
  'a list that says it has four thousand million members': [() => { const rules: unknown[] = []; rules.length = 4_294_967_295; return { ...pack, rules }; }, 'too-large'],
  'a million species': [() => ({ ...pack, species: Object.fromEntries(Array.from({ length: 300_000 }, (_, i) => [`s${i}`, {}])) }), 'too-large'],
  'data that holds itself': [() => circle, 'too-large'],
  'a getter that throws': [() => ({ get schema() { throw new Error('boo'); } }), 'wrong-type'],
  'functions': [() => ({ ...pack, species: () => pack.species }), 'wrong-type'],
  'no pack at all': [() => 'club', 'wrong-type'],
};

describe('a pack made to do harm', () => {
  it.each(Object.entries(poisoned))('is refused: %s', (_, [given, code]) => {
    const made = given();
    expect(wrongs(made)[0]).toMatch(new RegExp(`^${code}`));
    expect(({} as Readonly<Record<string, unknown>>)['polluted']).toBeUndefined();
  });

  it('does not slow down what reads texts: braces, dots and blanks as long as a text may be', () => {
    for (const part of ['{', '{a', ' ', '. ', '×', "'"]) {
      const text = part.repeat(Math.floor(mostOf.letters / part.length));
      wrongs(withRule({ because: text, title: 'The club never repots' }));
      wrongs(withSpecies({ name: `Acer ${text.slice(0, mostOf.letters - 5)}`, synonyms: [text], commonNames: { en: [text] } }));
    }
    expect(wrongs(withRule({ because: '{'.repeat(mostOf.letters) }))).toEqual([]);
  });

  it('whatever it is, is refused with a code or is taken; nothing else is thrown', () => {
    const odd = fc.oneof(fc.anything({ withBigInt: true, withDate: true, withMap: true, withNullPrototype: true, withSparseArray: true }), fc.record({
      schema: fc.constant('pack/1'), namespace: fc.oneof(fc.constant('club'), fc.string()), species: fc.dictionary(fc.string(), fc.anything()), rules: fc.dictionary(fc.string(), fc.anything()), overrides: fc.anything(),
    }));
    fc.assert(fc.property(odd, (given) => { wrongs(given); }), { numRuns: 300 });
  });
});

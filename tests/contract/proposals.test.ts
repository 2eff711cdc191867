import { readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { SparebudError } from '../../src/knowledge/error.js';
import { cases } from '../laws/cases.js';
import { advisor, root, shipped, stations } from '../shipped.js';
import { plausibleTree } from '../structure/plausibleTree.js';
import { arbitraryFromSchema } from './arbitraryFromSchema.js';

const read = (name: string): Record<string, unknown> => JSON.parse(readFileSync(`${root}schemas/${name}.schema.json`, 'utf8')) as Record<string, unknown>;
const valid = new Ajv2020({ strict: false, allErrors: true }).compile(read('assessment'));

type Answered = 'assessment' | 'refused';

/** Asks, and sees that what comes back is an assessment by its schema, or our coded error: nothing else. */
const answered = async (written: unknown): Promise<Answered> => {
  let answer: unknown;
  try {
    answer = await advisor.assess(written);
  } catch (cause) {
    if (!(cause instanceof SparebudError)) throw cause;
    expect(cause.issues.length).toBeGreaterThan(0);
    expect(cause.code).toBe(cause.issues[0]!.code);
    for (const issue of cause.issues) {
      expect(issue.code).toMatch(/^[a-z-]+$/);
      expect(issue.message).not.toBe('');
      expect(typeof issue.path).toBe('string');
    }
    return 'refused';
  }
  /* As it is when written out and read again, which is how others get it. */
  if (!valid(JSON.parse(JSON.stringify(answer)))) throw new Error(`not an assessment: ${JSON.stringify(valid.errors?.slice(0, 3).map(({ instancePath, message, data }) => ({ instancePath, message, data })))}`);
  return 'assessment';
};

const names = Object.values(shipped.species).flatMap((species) => [species.id, species.name, ...species.synonyms]);
const knownName = fc.oneof({ weight: 60, arbitrary: fc.constantFrom(...names) }, { weight: 1, arbitrary: fc.string({ minLength: 1, maxLength: 20 }) });

/** A coldest below a warmest, both of them or none: what no schema can say. */
const consistent = (proposal: unknown): unknown => {
  const { where, ...rest } = proposal as { readonly where?: Readonly<Record<string, unknown>> };
  if (where === undefined) return proposal;
  const { monthlyMinC: min, monthlyMaxC: max, ...others } = where as { monthlyMinC?: readonly number[]; monthlyMaxC?: readonly number[] };
  const both = min === undefined || max === undefined ? {} : { monthlyMinC: min.map((each, i) => Math.min(each, max[i]!)), monthlyMaxC: max.map((each, i) => Math.max(each, min[i]!)) };
  return { ...rest, where: { ...others, ...both } };
};

/* A structure drawn from the schema alone is mostly one that cannot be: branches above the trunk, two of one id. */
const { $defs } = read('proposal') as { readonly $defs: { readonly tree: { readonly properties: { readonly structure: object } } } };
const structure = fc.oneof({ weight: 12, arbitrary: plausibleTree.map((tree) => tree.structure) }, { weight: 1, arbitrary: arbitraryFromSchema({ ...$defs.tree.properties.structure, $defs }, {}) });
const branch = fc.oneof({ weight: 12, arbitrary: fc.constantFrom('b0', 'b1') }, { weight: 1, arbitrary: fc.string({ minLength: 1, maxLength: 20 }) });

const proposals = arbitraryFromSchema(read('proposal'), {
  'tree.structure': structure,
  'operation.branch': branch,
  'tree.species': knownName,
  'tree.rootstock': knownName,
  'where.place': fc.oneof({ weight: 60, arbitrary: fc.constantFrom(...stations.map((station) => station.id)) }, { weight: 1, arbitrary: fc.string({ minLength: 1, maxLength: 20 }) }),
}).map(consistent);

test('ten thousand proposals built from the schema each give an assessment or our coded error, and nine in ten an assessment', async () => {
  const count = cases(10_000);
  let assessed = 0;
  let asked = 0;
  await fc.assert(fc.asyncProperty(proposals, async (proposal) => {
    asked += 1;
    if ((await answered(proposal)) === 'assessment') assessed += 1;
  }), { numRuns: count });
  expect(asked).toBeGreaterThanOrEqual(count);
  expect(assessed / asked).toBeGreaterThanOrEqual(0.9);
}, 900_000);

test('ten thousand arbitrary JSON values each give our coded error, whatever stands in them', async () => {
  const members = fc.constantFrom('tree', 'operation', 'date', 'where', 'id', 'meta', 'ignore', '__proto__', 'constructor', 'toString', 'species', 'op', '');
  const shaped = fc.dictionary(members, fc.oneof(fc.jsonValue(), fc.dictionary(members, fc.jsonValue(), { maxKeys: 4 })), { maxKeys: 6 });
  await fc.assert(fc.asyncProperty(fc.oneof(fc.jsonValue(), shaped), async (value) => {
    expect(await answered(value)).toBe('refused');
  }), { numRuns: cases(10_000) });
}, 600_000);

test('a value that cannot be turned into text is refused like any other', async () => {
  for (const odd of [{ toString: 1, valueOf: 1 }, { toString: null }, Object.create(null) as object]) {
    expect(await answered({ tree: { species: 'juniperus-chinensis', vigour: odd }, operation: { op: 'repot' }, date: odd })).toBe('refused');
    expect(await answered({ tree: { species: odd }, operation: { op: odd } })).toBe('refused');
  }
});

test('a wound that never closes is refused, or answered without a year', async () => {
  for (const most of [0, 5e-324]) await answered({ tree: { species: 'juniperus-chinensis', traits: { 'healing.ingrowthMm': [0, most] } }, operation: { op: 'remove-branch', branchDiameterMm: 20 } });
});

test('what is no JSON at all is refused in the same way', async () => {
  for (const value of [undefined, () => 1, Symbol('x'), 10n, Number.NaN, new Date(0), new Map([['tree', 1]]), Object.create(null)]) expect(await answered(value)).toBe('refused');
});

test('one member of a good proposal changed to anything gives an assessment or our coded error', async () => {
  const good = { tree: { species: 'juniperus-chinensis', vigour: 'strong', log: [{ op: 'repot', date: '2024-03' }] }, operation: { op: 'repot', rootsRemoved: 0.3 }, date: '2026-04-02', where: { latitude: 51, longitude: 3.7 } };
  const paths: readonly (readonly string[])[] = [['tree'], ['tree', 'species'], ['tree', 'vigour'], ['tree', 'log'], ['tree', 'log', '0'], ['operation'], ['operation', 'op'], ['operation', 'rootsRemoved'], ['date'], ['where'], ['where', 'latitude'], ['meta'], ['id'], ['ignore']];
  const put = (at: unknown, [step, ...rest]: readonly string[], value: unknown): unknown =>
    step === undefined ? value : Array.isArray(at) ? at.map((member, i) => (String(i) === step ? put(member, rest, value) : member)) : { ...(at as object), [step]: put((at as Readonly<Record<string, unknown>>)[step], rest, value) };
  await fc.assert(fc.asyncProperty(fc.constantFrom(...paths), fc.jsonValue(), async (path, value) => {
    await answered(put(good, path, value));
  }), { numRuns: cases(2_000) });
}, 300_000);

test.each([
  ['a tree last repotted in the last month there is', { tree: { species: 'juniperus-chinensis', lastRepotted: '9999-12' }, operation: { op: 'repot' }, date: '2026-04-02' }],
  ['a log entry of the last month there is', { tree: { species: 'juniperus-chinensis', log: [{ op: 'repot', date: '9999-12' }] }, operation: { op: 'repot' }, date: '2026-04-02' }],
  ['a day at the end of all calendars', { tree: { species: 'juniperus-chinensis' }, operation: { op: 'repot' }, date: '9999-12-31', where: { latitude: 51 } }],
  ['a day at the beginning of all calendars', { tree: { species: 'juniperus-chinensis' }, operation: { op: 'repot' }, date: '0000-01-01', where: { latitude: 51 } }],
  ['a wound that never closes', { tree: { species: 'juniperus-chinensis', traits: { 'healing.ingrowthMm': [0.05, 0.05] } }, operation: { op: 'remove-branch', branchDiameterMm: 20 } }],
  ['an elevation and a region alone', { tree: { species: 'juniperus-chinensis' }, operation: { op: 'repot' }, date: '2026-04-02', where: { elevationM: 6000, region: 'GB' } }],
  ['a pole', { tree: { species: 'juniperus-chinensis' }, operation: { op: 'repot' }, date: '2026-04-02', where: { latitude: 90, longitude: 180 } }],
])('%s is answered', async (_, proposal) => {
  expect(await answered(proposal)).toBe('assessment');
});

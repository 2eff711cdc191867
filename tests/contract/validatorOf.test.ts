import { readdirSync, readFileSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { SchemaError } from '../../src/contract/keywordCheck.js';
import { type Validator, validatorOf } from '../../src/contract/validatorOf.js';
import { askedErrors } from '../../src/knowledge/askedErrors.js';
import { schemaIssues } from '../../src/knowledge/schemaIssues.js';
import { collectionSchema } from '../../src/knowledge/schemas/collectionSchema.js';
import { keepersSchema } from '../../src/knowledge/schemas/keepersSchema.js';
import { planSchema } from '../../src/knowledge/schemas/planSchema.js';
import { corpus } from '../../src/upkeep/corpus.js';
import { cases } from '../laws/cases.js';
import { root, shipped, shippedRead } from '../shipped.js';

/* Against ajv (https://ajv.js.org), an implementation of JSON Schema that is not ours: the same values pass, and the others give the same issues in the same order. */
const schemas = Object.fromEntries(readdirSync(`${root}schemas`).map((name) => [name, JSON.parse(readFileSync(`${root}schemas/${name}`, 'utf8')) as { readonly $id: string }]));
const ajv = new Ajv2020({ allErrors: true, verbose: true, strict: false, strictNumbers: true });
for (const schema of Object.values(schemas)) ajv.addSchema(schema);

/* Of things in a list that are of the wrong type, ajv does not say that they are alike; JSON Schema would have it said. Which two are alike is ours to leave out. */
const compared = (errors: readonly SchemaError[]): readonly unknown[] =>
  schemaIssues(
    errors
      .filter((error) => error.keyword !== 'uniqueItems' || !errors.some((other) => other.keyword === 'type' && other.instancePath.startsWith(`${error.instancePath}/`)))
      .map((error) => (error.message === undefined ? error : { ...error, message: error.message.replace(/ \(items ## .*\)/, '') })),
  );

/* What an app asks is checked by a schema that is made of the knowledge: it has to say what ajv says of the published one. */
const asked: Readonly<Record<string, Parameters<typeof askedErrors>[3]>> = { 'proposal.schema.json': undefined, 'plan.schema.json': planSchema, 'collection.schema.json': collectionSchema, 'keepers.schema.json': keepersSchema };

const issuesOfBoth = (name: string): ((value: unknown) => readonly [unknown, unknown]) => {
  const ours: Validator = name in asked ? (value) => askedErrors(value, shipped, name.replace('.schema.json', ''), asked[name]) : validatorOf(name, schemas);
  const theirs = ajv.getSchema(schemas[name]!.$id)!;
  return (value) => [compared(ours(value)), theirs(value) ? [] : compared((theirs.errors ?? []) as unknown as readonly SchemaError[])];
};

const proposals = corpus(shipped, `${root}tests/corpus.yaml`);
const structured = { tree: { species: 'acer', log: [{ op: 'repot', date: '2024-03' }, { saw: 'bud-swell', date: '2026-03-02' }], traits: { 'budding.bareWood': 'good', 'roots.phases': ['dormant'] }, lastRepotted: 'never', structure: { trunks: [{ id: 'main', points: [{ heightMm: 0, diameterMm: 40 }] }], branches: [{ id: 'low', heightMm: 90, faults: ['crossing'] }] } }, operation: { op: 'chop', foliageLeft: true }, date: '2026-03-04', where: { monthlyMinC: Array(12).fill(1), daily: [{ date: '2026-01-01', minC: 1, maxC: 2 }] }, ignore: ['a'], meta: { a: 1 } };
const filesIn = (folder: string): readonly unknown[] => [...shippedRead.files].filter(([path]) => path.startsWith(folder)).map(([, file]) => file.data);

const sound: Readonly<Record<string, readonly unknown[]>> = {
  'proposal.schema.json': [structured, structured, ...Array.from({ length: 60 }, (_, i) => proposals[(i * 661) % proposals.length])],
  'plan.schema.json': [{ tree: structured.tree, where: structured.where, steps: [{ date: '2026-03-04', operations: [structured.operation, { op: 'repot', rootsRemoved: 0.2 }] }] }],
  'collection.schema.json': [{ where: structured.where, trees: [{ id: 'one', tree: structured.tree }] }],
  'keepers.schema.json': [{ tree: structured.tree, date: '2026-03-04', years: 3 }],
  'species.schema.json': filesIn('species/'),
  'rule.schema.json': filesIn('rules/'),
  'operations.schema.json': filesIn('shared/operations'),
  'facts.schema.json': filesIn('shared/facts'),
  'aims.schema.json': filesIn('shared/aims'),
  'growing.schema.json': filesIn('shared/growing'),
  'alerts.schema.json': filesIn('shared/alerts'),
  'chores.schema.json': filesIn('shared/chores'),
};

const odd = fc.oneof(fc.jsonValue({ maxDepth: 2 }), fc.constantFrom<unknown>(null, '', 'x'.repeat(201), '🌱'.repeat(150), -1, 0, 1.5, 1e9, NaN, Infinity, [], [1, 1], [{ a: 1 }, { a: 1 }], {}, '2026-02-30', 'never', 'all', true));

/** A value with one member put wrong: another value in its place, a member gone, one more, or one twice. */
const putWrong = (value: unknown, picks: readonly number[], how: number, instead: unknown): unknown => {
  const [pick = 0, ...more] = picks;
  if (typeof value !== 'object' || value === null || more.length === 0) return how === 0 ? instead : value;
  const keys = Object.keys(value);
  if (how === 1 && more.length < 3) return Array.isArray(value) ? [...(value as unknown[]), instead] : { ...value, [`x${pick}`]: instead };
  if (keys.length === 0) return instead;
  const key = keys[pick % keys.length]!;
  const member = (value as Record<string, unknown>)[key];
  if (how === 2 && more.length < 3) return Array.isArray(value) ? [...(value as unknown[]), member] : Object.fromEntries(Object.entries(value).filter(([name]) => name !== key));
  if (how === 3 && more.length < 3 && !Array.isArray(value)) return Object.fromEntries(Object.entries(value).map(([name, each]) => [name === key ? `${name}s` : name, each as unknown]));
  const changed = putWrong(member, more, how, instead);
  return Array.isArray(value) ? (value as unknown[]).map((each, i) => (String(i) === key ? changed : each)) : { ...value, [key]: changed };
};

for (const [name, values] of Object.entries(sound)) {
  test(`${name}: what is sound passes, and what is put wrong gives the issues that ajv gives`, () => {
    expect(values.length).toBeGreaterThan(0);
    const both = issuesOfBoth(name);
    for (const value of values) expect(both(value)).toEqual([[], []]);
    let refused = 0;
    fc.assert(fc.property(fc.constantFrom(...values), fc.array(fc.nat(999), { minLength: 1, maxLength: 8 }), fc.integer({ min: 0, max: 3 }), odd, fc.boolean(), (value, picks, how, instead, twice) => {
      const once = putWrong(value, picks, how, instead);
      const [ours, theirs] = both(twice ? putWrong(once, [...picks].reverse(), how, instead) : once);
      expect(ours).toEqual(theirs);
      if ((ours as readonly unknown[]).length > 0) refused += 1;
    }), { numRuns: cases(1500) });
    expect(refused).toBeGreaterThan(300);
  });
}

test('a schema with a keyword that has no check is refused, and not passed over', () => {
  expect(() => validatorOf('odd', { odd: { type: 'object', patternProperties: {} } })).toThrow('no check of `patternProperties` in odd');
  expect(() => validatorOf('odd', { odd: { $ref: '#/$defs/none' } })).toThrow('no schema odd#/$defs/none');
});

import { cpSync, mkdtempSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { expect, test } from 'vitest';
import { drifted } from '../../src/upkeep/generate.js';
import { root } from '../shipped.js';

const names = readdirSync(`${root}schemas`).filter((name) => name.endsWith('.schema.json'));
const read = (name: string): Record<string, unknown> => JSON.parse(readFileSync(`${root}schemas/${name}`, 'utf8')) as Record<string, unknown>;

test('there is a schema of proposals, assessments, species and rules, and of every shared table', () => {
  for (const name of ['proposal', 'assessment', 'species', 'rule', 'facts', 'operations', 'phases', 'sources', 'alerts', 'cautions', 'following', 'growing', 'renames', 'wording']) expect(names).toContain(`${name}.schema.json`);
});

test.each(names)('%s is valid by the metaschema of JSON Schema 2020-12', (name) => {
  const ajv = new Ajv2020({ strict: false });
  const schema = read(name);
  expect(schema['$schema']).toBe('https://json-schema.org/draft/2020-12/schema');
  expect(ajv.validateSchema(schema), ajv.errorsText(ajv.errors)).toBe(true);
});

test('every schema resolves what it refers to', () => {
  const ajv = new Ajv2020({ strict: false });
  for (const name of names) ajv.addSchema(read(name));
  for (const name of names) expect(() => ajv.getSchema(read(name)['$id'] as string)).not.toThrow();
});

test('schemas, types and validators are what shared/ makes of them', async () => {
  expect(await drifted(root)).toEqual([]);
}, 120_000);

test('nothing is made of a shared file that cannot be read: schemas without its words would find fault with all the rest', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'shared-'));
  cpSync(`${root}shared`, join(folder, 'shared'), { recursive: true });
  const facts = join(folder, 'shared/facts.yaml');
  writeFileSync(facts, readFileSync(facts, 'utf8').replace('place.region:\n', 'place.region:\n  type: text\n'));
  await expect(drifted(folder)).rejects.toMatchObject({ issues: [{ code: 'duplicate', file: 'shared/facts.yaml' }] });
});

import { readFileSync, readdirSync } from 'node:fs';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { schemaId } from '../../src/knowledge/schemas/schema.js';
import { root } from '../shipped.js';

const ajv = new Ajv2020({ strict: false, allErrors: true });
for (const name of readdirSync(`${root}schemas`)) if (name.endsWith('.schema.json')) ajv.addSchema(JSON.parse(readFileSync(`${root}schemas/${name}`, 'utf8')) as object);

/** What a published schema finds wrong with an answer, as it is when written out and read again. */
export const wrongBy = (schema: string, answer: unknown): readonly string[] => {
  const validate = ajv.getSchema(schemaId(schema))!;
  return validate(JSON.parse(JSON.stringify(answer))) === true ? [] : (validate.errors ?? []).slice(0, 3).map(({ instancePath, message }) => `${instancePath} ${message ?? ''}`);
};

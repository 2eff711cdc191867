import { compile } from 'json-schema-to-typescript';
import type { Schema } from '../knowledge/schemas/schema.js';

const header = '/* Generated from schemas/ by `npm run generate`: change shared/ or src/upkeep/schemas instead. */\n';

/** Conditions on an object that a type cannot say, left to the validator. */
const sayable = (schema: unknown): unknown => {
  if (Array.isArray(schema)) return schema.map(sayable);
  if (typeof schema !== 'object' || schema === null) return schema;
  const entries = Object.entries(schema).filter(([key]) => !(key === 'allOf' && 'properties' in schema) && key !== 'if' && key !== 'then' && key !== 'else');
  const plain = Object.fromEntries(entries.map(([key, member]) => [key, sayable(member)]));
  if ('$ref' in plain && 'properties' in plain) delete plain['properties'];
  if ('allOf' in plain && Array.isArray(plain['type'])) delete plain['allOf'];
  return 'if' in schema && plain['properties'] === undefined && plain['$ref'] === undefined && Object.keys(plain).length <= 1 ? { type: 'object', additionalProperties: true } : plain;
};

/** TypeScript types of schemas, named as given. */
export const typesOf = async (schemas: Readonly<Record<string, Schema>>): Promise<string> => {
  const parts: string[] = [header];
  for (const [name, schema] of Object.entries(schemas)) {
    const plain = sayable(JSON.parse(JSON.stringify(schema))) as Record<string, unknown>;
    delete plain['$id'];
    plain['title'] = name;
    parts.push(await compile(plain as never, name, { bannerComment: '', additionalProperties: false, declareExternallyReferenced: true, format: false, unreachableDefinitions: false, ignoreMinAndMaxItems: false, maxItems: 12 }));
  }
  return parts.join('\n').replace(/^ \* @(?:min|max)Items.*\n/gm, '').replace(/\/\*\*\n \*\/\n/g, '');
};

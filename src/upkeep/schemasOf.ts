import type { Schema } from '../knowledge/schemas/schema.js';

const header = '/* Generated from schemas/ by `npm run generate`: change shared/ or src/upkeep/schemas instead. */\n';

/** Members that hold schemas by name, where a name such as `description` is no keyword. */
const named = new Set(['properties', '$defs']);

/** A schema without the words that no error needs: the description of a pattern says what is accepted. */
const bare = (schema: unknown): unknown => {
  if (Array.isArray(schema)) return schema.map(bare);
  if (typeof schema !== 'object' || schema === null) return schema;
  const words = ['$schema', '$id', 'title', 'examples', ...('pattern' in schema ? [] : ['description'])];
  return Object.fromEntries(Object.entries(schema).filter(([keyword]) => !words.includes(keyword)).map(([keyword, part]) => [
    keyword, named.has(keyword) ? Object.fromEntries(Object.entries(part as Schema).map(([name, each]) => [name, bare(each)])) : bare(part),
  ]));
};

/** A module of schemas by the names that references call them, for the validators that run in an app. */
export const schemasOf = (schemas: Readonly<Record<string, Schema>>): string =>
  `${header}export const schemas: Readonly<Record<string, object>> = ${JSON.stringify(Object.fromEntries(Object.entries(schemas).map(([name, schema]) => [`${name}.schema.json`, bare(schema)])))};\n`;

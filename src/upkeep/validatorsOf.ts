import { Ajv2020 } from 'ajv/dist/2020.js';
import standalone from 'ajv/dist/standalone/index.js';
import { build } from 'esbuild';
import type { Schema } from './schemas/schema.js';

const header = '// @ts-nocheck\n/* eslint-disable */\n/* Generated from schemas/ by `npm run generate`: change shared/ or src/upkeep/schemas instead. */\n';

/** A module of validators, one for each schema, that needs neither ajv nor `eval` when it runs. */
export const validatorsOf = async (schemas: Readonly<Record<string, Schema>>): Promise<string> => {
  const ajv = new Ajv2020({ allErrors: true, verbose: true, strict: false, code: { source: true, esm: true } });
  const names: Record<string, string> = {};
  for (const [name, schema] of Object.entries(schemas)) {
    ajv.addSchema(schema);
    names[`${name}Validator`] = schema['$id'] as string;
  }
  const make = (standalone as unknown as { default?: typeof standalone }).default ?? standalone;
  const source = (make as unknown as (ajv: Ajv2020, refs: Record<string, string>) => string)(ajv, names);
  const bundled = await build({ stdin: { contents: source, resolveDir: process.cwd(), loader: 'js' }, bundle: true, format: 'esm', platform: 'neutral', mainFields: ['module', 'main'], write: false, target: 'es2022', legalComments: 'none', minify: true });
  return header + bundled.outputFiles[0]!.text;
};

import { readFileSync } from 'node:fs';
import { InvalidArgumentError } from 'commander';
import { didYouMean } from '../../knowledge/nearest.js';
import { packageFile } from '../../knowledge/read/packageFile.js';

/** The members of an assessment that `--fields` chooses, checked against its schema. */
export const fieldsOf = (written: string): readonly string[] => {
  const schema = JSON.parse(readFileSync(packageFile('schemas/assessment.schema.json'), 'utf8')) as { readonly properties: object };
  const members = Object.keys(schema.properties);
  const fields = written.split(',').map((field) => field.trim());
  for (const field of fields) {
    if (!members.includes(field)) throw new InvalidArgumentError(`\`${field.slice(0, 40)}\` is no member of an assessment: ${didYouMean(field, members) ?? members.join(', ')}`);
  }
  return fields;
};

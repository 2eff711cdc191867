import type { SchemaError } from '../contract/keywordCheck.js';
import { type Validator, validatorOf } from '../contract/validatorOf.js';
import type { Knowledge } from './knowledge.js';
import { proposalSchema } from './schemas/proposalSchema.js';
import type { Schema } from './schemas/schema.js';

const made = new WeakMap<Knowledge, Map<string, Validator>>();

/**
 * What is wrong by its schema with what an app asks: a proposal, or a question that is made of parts of one.
 *
 * The schema of a proposal is made of the facts and operations that the knowledge has, when it is first needed.
 */
export const askedErrors = (value: unknown, knowledge: Knowledge, name = 'proposal', schema?: () => Schema): readonly SchemaError[] => {
  const validators = made.get(knowledge) ?? new Map<string, Validator>();
  made.set(knowledge, validators);
  const validator = validators.get(name) ?? validatorOf(`${name}.schema.json`, { [`${name}.schema.json`]: schema?.() ?? {}, 'proposal.schema.json': proposalSchema(knowledge, Object.keys(knowledge.aims.styles)) });
  validators.set(name, validator);
  return validator(value);
};

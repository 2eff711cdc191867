import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Aims } from '../knowledge/aims.js';
import { SparebudError } from '../knowledge/error.js';
import { readFolder } from '../knowledge/read/readFolder.js';
import { readFacts, readOperations } from '../knowledge/read/readWords.js';
import { assessmentSchema } from './schemas/assessmentSchema.js';
import { dueSchema } from './schemas/dueSchema.js';
import { keepersAnswerSchema } from './schemas/keepersAnswerSchema.js';
import { planAnswerSchema } from './schemas/planAnswerSchema.js';
import { publishedProposal } from './schemas/publishedProposal.js';
import { collectionSchema } from '../knowledge/schemas/collectionSchema.js';
import { keepersSchema } from '../knowledge/schemas/keepersSchema.js';
import { packSchema } from '../knowledge/schemas/packSchema.js';
import { planSchema } from '../knowledge/schemas/planSchema.js';
import { ruleSchema } from '../knowledge/schemas/ruleSchema.js';
import type { Schema } from '../knowledge/schemas/schema.js';
import { speciesSchema } from '../knowledge/schemas/speciesSchema.js';
import { compareSchema, explainedSchema, yearSchema } from './schemas/yearSchema.js';
import { sharedSchemas } from './schemas/wordsSchema.js';
import { typesOf } from './typesOf.js';

/**
 * Every file that follows from shared/: the schemas, and the types of src/contract.
 *
 * @throws SparebudError where a file of shared/ cannot be read: schemas without its words would find fault with all the rest
 */
export const generated = async (root: string): Promise<ReadonlyMap<string, string>> => {
  const shared = readFolder(root, 'shared');
  const unread = [...shared.values()].flatMap(({ issues }) => issues);
  if (unread.length > 0) throw new SparebudError(unread);
  const facts = readFacts(shared.get('facts'));
  const operations = readOperations(shared.get('operations'));
  const aims = shared.get('aims')!.data as Aims;
  const schemas: Readonly<Record<string, Schema>> = {
    proposal: publishedProposal(facts, operations, Object.keys(aims.styles)),
    assessment: assessmentSchema(facts, operations),
    plan: planSchema(),
    'plan-answer': planAnswerSchema(),
    collection: collectionSchema(),
    due: dueSchema(),
    year: yearSchema(),
    compare: compareSchema(),
    explained: explainedSchema(),
    keepers: keepersSchema(),
    'keepers-answer': keepersAnswerSchema(Object.keys(aims.terms)),
    species: speciesSchema(facts),
    rule: ruleSchema(facts, operations),
    pack: packSchema(),
    ...sharedSchemas(),
  };
  const files = new Map<string, string>();
  for (const [name, schema] of Object.entries(schemas)) files.set(`schemas/${name}.schema.json`, `${JSON.stringify(schema, undefined, 1)}\n`);
  files.set('src/contract/types.generated.ts', await typesOf({ Proposal: schemas['proposal']!, Assessment: schemas['assessment']! }));
  return files;
};

/** The generated files that are not what they should be. */
export const drifted = async (root: string): Promise<readonly string[]> => {
  const late: string[] = [];
  for (const [path, text] of await generated(root)) {
    let found = '';
    try {
      found = readFileSync(join(root, path), 'utf8');
    } catch {
      found = '';
    }
    if (found !== text) late.push(path);
  }
  return late;
};

export const writeGenerated = async (root: string): Promise<void> => {
  for (const [path, text] of await generated(root)) {
    mkdirSync(join(root, path, '..'), { recursive: true });
    writeFileSync(join(root, path), text);
  }
};

import type { FactWord } from '../knowledge.js';
import { closed, document, idOf, type Known, listOf, mapOf, type Schema, sourceId, text } from './schema.js';
import { valueSchema } from './valueSchema.js';

const sources = {
  source: { $ref: '#/$defs/source' },
  sources: { description: 'several sources: that agree, or that `either` sets side by side', ...listOf({ $ref: '#/$defs/source' }, 1) },
  note: text('one short sentence'),
};

const traitSchema = (fact: FactWord, facts: Readonly<Record<string, FactWord>>): Schema => {
  const value = valueSchema(fact, facts);
  const meaning = fact.unit === undefined ? fact.meaning : `${fact.meaning} (${fact.unit})`;
  const mayDiffer = fact.type === 'choice' || fact.type === 'number' || fact.type === 'boolean';
  return {
    description: meaning,
    ...closed({ is: { description: meaning, ...value }, ...(mayDiffer ? { either: { description: 'where sources disagree: judged as either', ...listOf(value, 2), uniqueItems: true } } : {}), ...sources }),
    if: { required: ['either'] },
    then: { required: ['sources'] },
    else: { required: ['is'] },
  };
};

/** The schema of a file in species/. */
export const speciesSchema = (facts: Readonly<Record<string, FactWord>>, known?: Known): Schema => {
  const traits: Record<string, Schema> = {};
  for (const fact of Object.values(facts)) if (fact.id.startsWith('species.')) traits[fact.id.slice('species.'.length)] = traitSchema(fact, facts);
  const names = {
    name: text('accepted name'),
    author: text('author of the name'),
    commonNames: { description: 'by language: en, de, fr, ja-Latn …', ...mapOf(listOf(text(), 1)) },
    synonyms: { description: 'other scientific names', ...listOf(text()) },
  };
  const body = closed(
    {
      ...names,
      parent: idOf(known?.parents, 'id of the genus or group that it differs from'),
      asParent: text('why no deciding trait differs from the parent'),
      traits: { description: 'only what differs from the parent', ...closed(traits), type: ['object', 'null'] },
      members: { description: 'names that have no file yet: answered from here', ...mapOf(closed({ ...names, note: text() }, ['name'])) },
    },
    ['name'],
  );
  return document('species', 'A species, genus or group', { ...body, $defs: { source: sourceId(known) } });
};

import type { FactWord } from '../../knowledge/knowledge.js';
import { closed, document, listOf, mapOf, type Schema, text } from './schema.js';
import { valueSchema } from './valueSchema.js';

const sources = { source: text('id of a source in shared/sources.yaml'), sources: listOf(text(), 1), note: text('one short sentence') };

const traitSchema = (fact: FactWord, facts: Readonly<Record<string, FactWord>>): Schema => {
  const value = valueSchema(fact, facts);
  const mayDiffer = fact.type === 'choice' || fact.type === 'number' || fact.type === 'boolean';
  return {
    description: fact.unit === undefined ? fact.meaning : `${fact.meaning} (${fact.unit})`,
    ...closed({ is: value, ...(mayDiffer ? { either: { ...listOf(value, 2), uniqueItems: true } } : {}), ...sources }),
    if: { required: ['either'] },
    then: { required: ['sources'] },
    else: { required: ['is'] },
  };
};

/** The schema of a file in species/. */
export const speciesSchema = (facts: Readonly<Record<string, FactWord>>): Schema => {
  const names = mapOf(listOf(text(), 1));
  const traits: Record<string, Schema> = {};
  for (const fact of Object.values(facts)) if (fact.id.startsWith('species.')) traits[fact.id.slice('species.'.length)] = traitSchema(fact, facts);
  const named = { name: text('accepted name'), author: text(), commonNames: names, synonyms: listOf(text()) };
  return document('species', 'A species, genus or group', closed(
    {
      name: named.name,
      author: named.author,
      parent: text('id of the genus or group that it differs from'),
      commonNames: names,
      synonyms: named.synonyms,
      asParent: text('why no deciding trait differs from the parent'),
      traits: closed(traits),
      members: mapOf(closed({ ...named, note: text() }, ['name'])),
    },
    ['name'],
  ));
};

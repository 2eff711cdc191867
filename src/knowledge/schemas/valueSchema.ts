import type { FactWord } from '../knowledge.js';
import { listOf, type Schema } from './schema.js';

/** The members of a fact that is a list: its own values, or those of the fact that it is a list of. */
export const membersOf = (fact: FactWord, facts: Readonly<Record<string, FactWord>>): readonly string[] =>
  fact.values ?? (fact.of === undefined ? [] : (facts[fact.of]?.values ?? []));

/** What one value of a fact or trait may be. */
export const valueSchema = (fact: FactWord, facts: Readonly<Record<string, FactWord>>): Schema => {
  const bounds = fact.bounds === undefined ? {} : { minimum: fact.bounds[0], maximum: fact.bounds[1] };
  switch (fact.type) {
    case 'choice':
      return { enum: fact.values ?? [] };
    case 'number':
      return { type: fact.whole === true ? 'integer' : 'number', ...bounds };
    case 'boolean':
      return { type: 'boolean' };
    case 'text':
      return { type: 'string', maxLength: 200 };
    case 'list':
      return { ...listOf({ enum: membersOf(fact, facts) }), uniqueItems: true };
    case 'range':
      return { type: 'array', items: { type: 'number', ...bounds }, minItems: 2, maxItems: 2 };
    case 'records':
      return listOf({ type: 'object', additionalProperties: { type: ['string', 'number'] } });
  }
};

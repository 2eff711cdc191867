import { closed, document, listOf, mapOf, partOf, type Schema, text } from './schema.js';
import { sourceSchema } from './sourceSchema.js';

/** Members under ids of the pack's own, such as `acer-x` or `roots/too-wet`. */
const named = (values: Schema, description: string): Schema => ({ ...mapOf(values), description, propertyNames: { type: 'string', maxLength: 80, pattern: '^[a-z0-9]+(?:[-/][a-z0-9]+)*$', description: 'small letters, digits and hyphens' } });

/** The schema of a pack: species and rules that an app adds at run time, or that it sets in the place of those that there are. */
export const packSchema = (): Schema => document('pack', 'A pack of species and rules', closed(
  {
    schema: { const: 'pack/1' },
    namespace: { type: 'string', maxLength: 30, pattern: '^[a-z][a-z0-9-]*$', description: 'small letters, digits and hyphens: what stands before each id of the pack, as in club:acer-x' },
    version: { type: 'string', maxLength: 40 },
    sources: named(sourceSchema, 'sources of its own'),
    species: named(partOf('species', ''), 'species of its own; a parent, a source and a rule are named by their whole ids, those of the pack with its namespace'),
    rules: named(partOf('rule', ''), 'rules of its own'),
    overrides: {
      description: 'what it says otherwise, by the ids that there are',
      ...closed({
        traits: { ...mapOf(partOf('species', '/properties/traits')), description: 'traits of a species, and of all that take them from it' },
        rules: { ...mapOf(partOf('rule', '')), description: 'rules in the place of others' },
        silence: { ...listOf(text('id of a rule')), description: 'rules that are not asked any more' },
      }),
    },
  },
  ['schema', 'namespace'],
));

import { closed, document, listOf, partOf, type Schema } from './schema.js';

const where = partOf('proposal', '/$defs/where');
const id: Schema = { type: 'string', minLength: 1, maxLength: 200 };

/** The schema of a collection: many trees, at one place or several. */
export const collectionSchema = (): Schema =>
  document('collection', 'A collection: many trees, at one place or several', closed(
    {
      where,
      trees: { ...listOf(closed({ id: { ...id, description: 'yours; what is due is told by it' }, where, tree: partOf('proposal', '/$defs/tree') }, ['id', 'tree']), 1), maxItems: 5000 },
      meta: { type: 'object', description: 'yours; never read' },
    },
    ['trees'],
  ));

import { closed, dated, document, partOf, type Schema } from './schema.js';

/** The schema of the question which branches to keep. */
export const keepersSchema = (): Schema =>
  document('keepers', 'Which branches of a tree to keep for an aim', closed(
    {
      id: { type: ['string', 'number'], description: 'yours; echoed' },
      tree: { ...partOf('proposal', '/$defs/tree'), description: 'with its structure; the style stands in tree.aim.style' },
      where: partOf('proposal', '/$defs/where'),
      date: { ...dated, description: 'YYYY-MM-DD, the first day on which something may be done' },
      years: { type: 'integer', minimum: 1, maximum: 10, description: 'over how many years the work may be spread' },
      ignore: partOf('proposal', '/properties/ignore'),
      meta: { type: 'object', description: 'yours; echoed, never read' },
    },
    ['tree', 'date'],
  ));

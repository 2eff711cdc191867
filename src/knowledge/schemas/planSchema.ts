import { closed, dated, document, listOf, partOf, type Schema } from './schema.js';

/** The schema of a plan: work on one tree, step by step. */
export const planSchema = (): Schema =>
  document('plan', 'A plan: work on one tree in steps, each a date and the operations of one sitting', closed(
    {
      id: { type: ['string', 'number'], description: 'yours; echoed' },
      tree: partOf('proposal', '/$defs/tree'),
      where: partOf('proposal', '/$defs/where'),
      steps: { ...listOf(closed({ date: dated, operations: { ...listOf(partOf('proposal', '/properties/operation'), 1), maxItems: 40 } }, ['date', 'operations']), 1), maxItems: 100 },
      ignore: partOf('proposal', '/properties/ignore'),
      meta: { type: 'object', description: 'yours; echoed, never read' },
    },
    ['tree', 'steps'],
  ));

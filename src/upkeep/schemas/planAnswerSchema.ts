import { closed, dated, document, listOf, oneOf, partOf, type Schema } from '../../knowledge/schemas/schema.js';

const tree = partOf('proposal', '/$defs/tree');
const verdict = oneOf(['allowed', 'risky', 'advise-against']);
const message = partOf('assessment', '/$defs/message');
const points: Schema = { type: 'number', minimum: 0, description: 'a hard job asks 4, a light one 1; growth makes it good' };
const share: Schema = { type: 'number', minimum: 0 };

/** The schema of the answer to a plan. */
export const planAnswerSchema = (): Schema => {
  const strain = closed({ before: points, asks: points, sum: points }, ['before', 'asks', 'sum']);
  const sitting = closed({ verdict, because: message, foliageShare: share, cutAreaShare: share, rootsRemoved: share, strain }, ['verdict', 'because', 'strain']);
  const step = closed({ date: dated, sitting, operations: listOf(partOf('assessment', ''), 1) }, ['date', 'sitting', 'operations']);
  return document('plan-answer', 'The answer to a plan', closed(
    {
      schema: { const: 'plan/1' },
      id: { type: ['string', 'number'] },
      verdict,
      because: message,
      steps: listOf(step, 1),
      strain: closed({ most: points, on: dated }, ['most', 'on']),
      treeAfter: tree,
      changes: listOf(closed({ patch: { type: 'object', additionalProperties: {} }, why: message, verdict }, ['patch', 'why', 'verdict'])),
      meta: { type: 'object' },
    },
    ['schema', 'verdict', 'because', 'steps', 'strain', 'treeAfter', 'changes'],
  ));
};

import { closed, dated, document, listOf, oneOf, partOf, text, type Schema } from '../../knowledge/schemas/schema.js';

const ids = listOf(text('id of a branch or trunk of tree.structure'));
const height: Schema = { type: 'number', minimum: 0, description: 'mm above the soil' };

/** The schema of the sets of branches that are worth keeping. */
export const keepersAnswerSchema = (terms: readonly string[]): Schema => {
  const message = partOf('assessment', '/$defs/message');
  const verdict = oneOf(['allowed', 'risky', 'advise-against']);
  const leader = closed({ branch: text('id of the branch that leads on'), heightMm: height }, ['branch', 'heightMm']);
  const stage = closed({ date: dated, remove: ids, leader, verdict, because: message }, ['date', 'remove', 'verdict', 'because']);
  const part = closed({ term: oneOf(terms), branches: ids, cost: { type: 'number', minimum: 0 }, why: message }, ['term', 'branches', 'cost', 'why']);
  const set = closed({ keep: ids, remove: ids, leader, stages: listOf(stage), cost: { type: 'number', minimum: 0 }, parts: listOf(part), spared: listOf(closed({ branch: text(), parts: listOf(part) }, ['branch', 'parts'])) }, ['keep', 'remove', 'stages', 'cost', 'parts', 'spared']);
  const tie = closed({ set: { type: 'integer', minimum: 1, description: 'its place in sets, the best being 0' }, dearerBy: { type: 'number', minimum: 0 }, why: message }, ['set', 'dearerBy', 'why']);
  return document('keepers-answer', 'The sets of branches worth keeping, the best first', closed(
    { schema: { const: 'keepers/1' }, id: { type: ['string', 'number'] }, aim: message, sets: listOf(set, 1), ties: listOf(tie), notices: listOf(message), meta: { type: 'object' } },
    ['schema', 'aim', 'sets', 'ties', 'notices'],
  ));
};

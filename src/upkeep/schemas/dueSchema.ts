import { closed, document, listOf, oneOf, partOf, type Schema, text } from '../../knowledge/schemas/schema.js';

const dated: Schema = { type: 'string', pattern: '^-?[0-9]{4,6}-[0-9]{2}-[0-9]{2}$' };
const id: Schema = { type: 'string', minLength: 1, maxLength: 200 };

/** The schema of what is due in a collection. */
export const dueSchema = (): Schema => {
  const message = partOf('assessment', '/$defs/message');
  const item = closed(
    {
      id: text('stable: the same piece of work keeps it, whenever it is asked'), tree: id, operation: { type: 'object', required: ['op'] },
      window: closed({ from: dated, to: dated, plusMinusDays: { type: 'number' } }, ['from', 'to', 'plusMinusDays']),
      state: oneOf(['overdue', 'open', 'soon']), since: { ...dated, description: 'the day from which it is overdue' }, verdict: oneOf(['allowed', 'risky']), why: message,
    },
    ['id', 'tree', 'operation', 'window', 'state', 'verdict', 'why'],
  );
  const issue: Schema = { type: 'object', required: ['code', 'path', 'message'] };
  return document('due', 'What is due in a collection', closed(
    { schema: { const: 'due/1' }, date: dated, items: listOf(item), untold: listOf(closed({ fact: text('what would have to be told'), trees: listOf(id, 1), text: message }, ['fact', 'trees', 'text'])), unanswered: listOf(closed({ tree: text(), issues: listOf(issue, 1) }, ['tree', 'issues'])) },
    ['schema', 'date', 'items', 'untold', 'unanswered'],
  ));
};

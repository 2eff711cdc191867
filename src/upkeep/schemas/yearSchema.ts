import { closed, document, listOf, oneOf, partOf, type Schema, text } from '../../knowledge/schemas/schema.js';

const dated: Schema = { type: 'string', pattern: '^-?[0-9]{4,6}-[0-9]{2}-[0-9]{2}$' };
const verdict = oneOf(['allowed', 'risky', 'advise-against']);
const message = partOf('assessment', '/$defs/message');
const run = { from: dated, to: dated };

/** The schema of a year: phases, frost, day length, and each operation's verdict day by day. */
export const yearSchema = (): Schema =>
  document('year', 'A year of one tree at one place, day by day', closed(
    {
      schema: { const: 'year/1' },
      species: text('id'),
      label: text('what a grower calls it'),
      ...run,
      phases: listOf(closed({ ...run, phase: text(), label: text('what the phase is called'), plusMinusDays: { type: 'number', minimum: 0 } }, ['from', 'to', 'phase', 'label', 'plusMinusDays'])),
      frost: closed({ reliable: { type: 'boolean' }, last: dated, first: dated, lastOneInTen: dated, firstOneInTen: dated, lastAtRim: dated, firstAtRim: dated }, ['reliable']),
      daylengthH: listOf(closed({ date: dated, hours: { type: 'number', minimum: 0, maximum: 24 } }, ['date', 'hours'])),
      chillPortions: { type: 'integer', minimum: 0, description: 'what an ordinary winter brings, by the Dynamic Model; only where monthly temperatures are told or measured' },
      operations: listOf(closed(
        { op: text(), operation: { type: 'object', required: ['op'] }, label: text(), runs: listOf(closed({ ...run, verdict, settled: { type: 'boolean' }, because: message }, ['from', 'to', 'verdict', 'settled']), 1) },
        ['op', 'operation', 'label', 'runs'],
      )),
      where: message,
      notices: listOf(message),
    },
    ['schema', 'species', 'label', 'from', 'to', 'phases', 'frost', 'daylengthH', 'operations', 'where', 'notices'],
  ));

/** The schema of a comparison: ways to do it side by side. */
export const compareSchema = (): Schema => {
  const variant = closed(
    {
      label: text(), patch: { type: 'object', description: 'JSON Merge Patch, RFC 7396' }, verdict, range: { ...listOf(verdict), minItems: 2, maxItems: 2 }, settled: { type: 'boolean' }, expect: partOf('assessment', '/properties/expect'),
      findingsAdded: listOf(text('id of a rule')), findingsGone: listOf(text('id of a rule')), issues: listOf({ type: 'object', required: ['code', 'path', 'message'] }, 1),
    },
    ['label', 'patch', 'findingsAdded', 'findingsGone'],
  );
  return document('compare', 'Ways to do it side by side', closed({ schema: { const: 'compare/1' }, variants: listOf(variant, 1), best: listOf(text('label of a variant that none other beats'), 1), why: message }, ['schema', 'variants', 'best', 'why']));
};

/** The schema of a kept answer beside today's. */
export const explainedSchema = (): Schema => {
  const found = closed({ verdict, fires: oneOf(['certainly', 'possibly']) }, ['verdict', 'fires']);
  const bothOf = (each: Schema): Schema => closed({ then: each, now: each }, ['then']);
  return document('explained', 'A kept answer beside what the same question is answered today', closed(
    {
      schema: { const: 'explained/1' },
      knowledge: closed({ then: text(), now: text(), same: { type: 'boolean' } }, ['then', 'now', 'same']),
      species: bothOf(text('id')),
      verdict: bothOf(verdict),
      range: bothOf({ ...listOf(verdict), minItems: 2, maxItems: 2 }),
      findings: listOf(closed(
        { rule: text('id'), renamedTo: text('id'), change: oneOf(['same', 'removed', 'gone', 'new', 'worse', 'milder', 'more-certain', 'less-certain']), then: found, now: found, why: message },
        ['rule', 'change', 'why'],
      )),
      issues: listOf({ type: 'object', required: ['code', 'path', 'message'] }, 1),
    },
    ['schema', 'knowledge', 'species', 'verdict', 'range', 'findings'],
  ));
};

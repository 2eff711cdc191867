import type { FactWord, OperationWord } from '../knowledge.js';
import { byKind, closed, document, idOf, type Known, listOf, oneOf, type Schema, sourceId, text } from './schema.js';
import { membersOf, valueSchema } from './valueSchema.js';

/** What may stand beside a fact in a condition: only what fits the fact's type. */
const operandSchema = (fact: FactWord, facts: Readonly<Record<string, FactWord>>): Schema => {
  const traits = Object.values(facts).filter((other) => other.id.startsWith('species.'));
  const bare = (type: string, fits: (other: FactWord) => boolean): readonly string[] =>
    traits.filter((other) => other.type === type && fits(other)).map((other) => other.id.slice('species.'.length));
  switch (fact.type) {
    case 'choice': {
      const one = oneOf(fact.values ?? []);
      const lists = bare('list', (other) => membersOf(other, facts).every((value) => fact.values?.includes(value)));
      const within: Record<string, Schema> = lists.length === 0 ? {} : { in: closed({ trait: oneOf(lists) }, ['trait']) };
      const not = byKind({ string: one, array: listOf(one, 1), ...(lists.length === 0 ? {} : { object: closed(within, ['in']) }) });
      /* Examples: what an editor offers before anything is written. */
      return { examples: fact.values ?? [], ...byKind({ string: one, array: listOf(one, 1), object: { ...closed({ not, ...within }), minProperties: 1 } }) };
    }
    case 'number': {
      const number = { type: 'number' };
      const limit = byKind({ number, object: { $ref: '#/$defs/limit' } });
      const between = { ...listOf(number), minItems: 2, maxItems: 2 };
      return { ...byKind({ number, object: { ...closed({ above: limit, below: limit, atLeast: limit, atMost: limit, between }), minProperties: 1 } }) };
    }
    case 'boolean':
      return { type: 'boolean' };
    case 'list': {
      const has = oneOf(membersOf(fact, facts));
      return { ...closed({ has, not: closed({ has }, ['has']) }), minProperties: 1, maxProperties: 1 };
    }
    case 'text':
      return { ...byKind({ string: text(), array: listOf(text(), 1), object: closed({ not: byKind({ string: text(), array: listOf(text(), 1) }) }, ['not']) }) };
    case 'range':
    case 'records':
      return { not: {} };
  }
};

/** The schema of a file in rules/: an editor completes facts and values from it. */
export const ruleSchema = (facts: Readonly<Record<string, FactWord>>, operations: Readonly<Record<string, OperationWord>>, known?: Known): Schema => {
  const usable = Object.values(facts).filter((fact) => fact.type !== 'range' && fact.type !== 'records');
  const shared = new Map<string, { readonly name: string; readonly schema: Schema }>();
  const operandOf = (fact: FactWord): Schema => {
    const schema = operandSchema(fact, facts);
    const key = JSON.stringify(schema);
    const kept = shared.get(key) ?? { name: `operand-${shared.size + 1}`, schema };
    shared.set(key, kept);
    return { description: fact.unit === undefined ? fact.meaning : `${fact.meaning} (${fact.unit})`, $ref: `#/$defs/${kept.name}` };
  };
  const operands = Object.fromEntries(usable.map((fact) => [fact.id, operandOf(fact)]));
  const conditions = listOf({ $ref: '#/$defs/condition' }, 1);
  const op = oneOf(Object.keys(operations));
  const valueOf = (fact: FactWord): Schema => ({ $ref: `#/$defs/${fact.id}` });
  const valued = Object.values(facts).filter((fact) => fact.type !== 'records');
  const parameters = Object.fromEntries(usable.filter((fact) => fact.given?.startsWith('operation.')).map((fact) => [fact.given!.slice('operation.'.length), valueOf(fact)]));
  const given = Object.fromEntries(valued.map((fact) => [fact.id, valueOf(fact)]));
  const numbers = oneOf(usable.filter((fact) => fact.type === 'number' && fact.id.startsWith('species.')).map((fact) => fact.id.slice('species.'.length)));
  const limit = { ...closed({ trait: numbers, times: { type: 'number' }, plus: { type: 'number' }, operation: oneOf(['daysNeeded']) }), minProperties: 1 };
  const sources = { description: 'what it rests on', ...listOf({ $ref: '#/$defs/source' }, 1) };
  const phase = oneOf(facts['season.phase']?.values ?? []);
  const body = closed(
    {
      title: { type: 'string', maxLength: 70, description: 'what goes wrong, in at most eight words' },
      operations: byKind({ string: { const: 'all' }, array: { ...listOf(op, 1), uniqueItems: true } }),
      verdict: oneOf(['risky', 'advise-against'], 'risky: it can work, at a cost or on a condition; advise-against: likely to lose the branch, the tree or years, or plainly worse than another time or way'),
      costs: oneOf(['tree', 'branch', 'flowers', 'time', 'looks'], 'what is at stake'),
      when: { description: 'all must hold', ...conditions },
      unless: { description: 'each entry lifts the rule, with a reason of its own', ...listOf(closed({ when: conditions, because: text('why it lifts the rule'), sources }, ['when', 'because', 'sources'])) },
      because: text('the mechanism first, then what it means for this tree, with its own numbers as {fact}'),
      instead: { ...closed({ wait: byKind({ string: phase, array: listOf(phase, 1) }), do: closed({ op, ...parameters }, ['op']), set: closed(parameters) }), minProperties: 1 },
      covers: { description: 'milder rules that need not be shown where this one fires', ...listOf(idOf(known?.rules, 'id of a milder rule')) },
      reverses: listOf(oneOf(usable.map((fact) => fact.id))),
      note: text(),
      sources,
      examples: listOf(closed({ operation: op, given: closed({ species: idOf(known?.species, 'the species whose traits count'), ...given }), fires: oneOf(['certainly', 'possibly', 'never']), verdict: oneOf(['risky', 'advise-against'], 'what the rule says where it fires for certain: at least one example says it') }, ['given', 'fires']), 1),
    },
    ['title', 'operations', 'verdict', 'costs', 'when', 'because', 'sources', 'examples'],
  );
  const nested = listOf({ $ref: '#/$defs/condition' }, 1);
  return document('rule', 'A rule', {
    ...body,
    $defs: {
      condition: { ...closed({ any: nested, all: nested, ...operands }), minProperties: 1, maxProperties: 1 },
      source: sourceId(known),
      limit,
      ...Object.fromEntries([...shared.values()].map(({ name, schema }) => [name, schema])),
      ...Object.fromEntries(valued.map((fact) => [fact.id, valueSchema(fact, facts)])),
    },
  });
};

import type { FactWord, OperationWord } from '../../knowledge/knowledge.js';
import { closed, document, listOf, oneOf, type Schema, text } from '../../knowledge/schemas/schema.js';

const verdict = oneOf(['allowed', 'risky', 'advise-against']);
const dated = { type: 'string', pattern: '^-?[0-9]{4,6}-[0-9]{2}-[0-9]{2}$' };
const value: Schema = { type: ['string', 'number', 'boolean', 'null', 'array'], items: { type: ['string', 'number'] }, description: 'a value of the fact; null where it is not known' };
const range = { type: 'array', items: { type: 'number' }, minItems: 2, maxItems: 2 };

/** The schema of an assessment: what is answered. */
export const assessmentSchema = (facts: Readonly<Record<string, FactWord>>, operations: Readonly<Record<string, OperationWord>>): Schema => {
  const fact = oneOf(Object.keys(facts));
  const message = { $ref: '#/$defs/message' };
  const operation: Schema = { type: 'object', properties: { op: oneOf(Object.keys(operations)) }, required: ['op'], additionalProperties: { type: ['string', 'number', 'boolean', 'array'] } };
  const source = closed({ id: text(), title: text(), author: text(), year: { type: 'integer' }, from: oneOf(['read', 'memory', 'practice']), studied: text() }, ['id', 'title', 'from', 'studied']);
  const looked = closed({ fact, value, limit: { type: 'object' }, from: text('how the fact is known: given, worked-out, season, estimated, assumed, unknown, or the level that a trait came from'), plusMinus: { type: 'number' }, pack: text('the pack that the trait came from that it is, or that sets its limit') }, ['fact', 'value', 'limit', 'from']);
  const finding = closed(
    {
      rule: text(), verdict: oneOf(['risky', 'advise-against']), fires: oneOf(['certainly', 'possibly']), costs: oneOf(['tree', 'branch', 'flowers', 'time', 'looks']), title: message, because: message,
      facts: listOf(looked), sources: listOf(source), strength: oneOf(['strong', 'fair', 'weak']), disputed: listOf(fact), pack: text('the pack that the rule came from'),
    },
    ['rule', 'verdict', 'fires', 'costs', 'title', 'because', 'facts', 'sources', 'strength'],
  );
  const answer = closed({ value, below: { type: 'number' }, atLeast: { type: 'number' }, verdict, range: { ...listOf(verdict), minItems: 2, maxItems: 2 } }, ['verdict']);
  const expect = closed({ closureYears: range, recoveryWeeks: range, wireMarksWeeks: range, dieBackMm: range, backBudding: oneOf(['sure', 'likely', 'unsure', 'unlikely', 'none']), regrowth: message });
  const body = closed(
    {
      schema: { const: 'assessment/1' },
      id: { type: ['string', 'number'] },
      proposal: { type: 'object', additionalProperties: {} },
      verdict,
      range: { ...listOf(verdict), minItems: 2, maxItems: 2 },
      settled: { type: 'boolean' },
      summary: message,
      findings: listOf(finding),
      assumed: listOf(closed({ fact, value, otherwise: listOf(answer) }, ['fact', 'value', 'otherwise'])),
      questions: { ...listOf(closed({ fact, ask: message, answers: listOf(answer) }, ['fact', 'ask', 'answers'])), maxItems: 5 },
      changes: listOf(closed({ patch: { type: 'object', additionalProperties: {} }, why: message, verdict }, ['patch', 'why', 'verdict'])),
      windows: listOf(closed({ from: dated, to: dated, plusMinusDays: { type: 'number' }, phase: oneOf(facts['season.phase']?.values ?? []), verdict }, ['from', 'to', 'plusMinusDays', 'verdict'])),
      alternatives: listOf(closed({ operation, verdict, why: message }, ['operation', 'verdict', 'why'])),
      expect,
      after: listOf(closed({ do: message, from: dated, to: dated, operation }, ['do'])),
      prunings: listOf(closed({ operation, verdict }, ['operation', 'verdict'])),
      cautions: listOf(closed({ id: text(), text: text() }, ['id', 'text'])),
      notices: listOf(message),
      basis: closed(
        { species: text(), asked: text(), traitsFrom: oneOf(['taxon', 'genus', 'group']), rootstock: text(), own: listOf(text()), phase: text(), phaseFrom: oneOf(['seen', 'season', 'none']), where: message, knowledge: text(), packs: listOf(closed({ namespace: text(), version: text() }, ['namespace'])), ignored: listOf(text()) },
        ['species', 'traitsFrom', 'phaseFrom', 'where', 'knowledge'],
      ),
      meta: { type: 'object' },
    },
    ['schema', 'proposal', 'verdict', 'range', 'settled', 'summary', 'findings', 'assumed', 'questions', 'changes', 'windows', 'alternatives', 'expect', 'after', 'prunings', 'cautions', 'notices', 'basis'],
  );
  return document('assessment', 'An assessment: the answer to a proposal', {
    ...body,
    $defs: { message: closed({ id: text(), params: { type: 'object', additionalProperties: { type: ['string', 'number', 'boolean'] } }, text: text() }, ['id', 'params', 'text']) },
  });
};

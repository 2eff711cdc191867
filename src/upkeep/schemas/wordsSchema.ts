import { aimsSchema } from './aimsSchema.js';
import { byKind, closed, document, listOf, mapOf, oneOf, type Schema, text } from '../../knowledge/schemas/schema.js';
import { sourceSchema } from '../../knowledge/schemas/sourceSchema.js';

const value: Schema = byKind({ string: {}, number: {}, boolean: {}, array: listOf(text()) });
const shares = mapOf({ type: 'number', minimum: 0 });
const words = mapOf(listOf(text(), 1));
const pair = { type: 'array', items: { type: 'number' }, minItems: 2, maxItems: 2 } as const;
const sources = listOf(text('id of a source in shared/sources.yaml'), 1);
const monthDay = { type: 'string', pattern: '^[0-9]{2}-[0-9]{2}$' } as const;
const named = byKind({ string: { const: 'all' }, array: { ...listOf(text(), 1), uniqueItems: true } });
const when = listOf({ $ref: 'rule.schema.json#/$defs/condition' }, 1);
const figure = byKind({ number: { minimum: 0 }, object: closed({ trait: text(), times: { type: 'number' } }, ['trait', 'times']) });
const done = { type: 'object', required: ['op'] } as const;
const days = { type: 'integer', minimum: 1 } as const;
const rate = { type: 'number', exclusiveMinimum: 0 } as const;

const left = byKind({ string: {}, object: closed({ parameter: text('the parameter of the operation that tells it'), as: mapOf(text()) }, ['parameter']) });

const factSchema = closed(
  {
    type: oneOf(['choice', 'number', 'boolean', 'list', 'range', 'text', 'records']),
    values: { ...listOf(text(), 1), uniqueItems: true },
    of: text('a list of the values of this other fact'),
    unit: oneOf(['days', 'weeks', 'years', 'mm', '°C', 'share', 'degree-days']),
    bounds: pair,
    whole: { type: 'boolean' },
    label: text('a short name for it'),
    meaning: text(),
    given: text('where a proposal tells it'),
    chosen: { type: 'boolean' },
    from: listOf(text(), 1),
    assume: byKind({ string: {}, number: {}, boolean: {}, object: { required: ['default'] } }),
    ask: text('the question in the wording'),
    worse: oneOf(['low', 'high']),
    tries: listOf({ type: 'number' }, 1),
    optional: { type: 'boolean' },
  },
  ['type', 'meaning'],
);

const operationSchema = closed(
  {
    label: text(),
    group: text('the kind of work that it is'),
    parameters: { ...listOf(text()), uniqueItems: true },
    usual: listOf(mapOf(value), 1),
    aliases: mapOf(mapOf(value)),
    strain: closed({ least: oneOf(['none', 'light', 'hard']), lightFrom: shares, hardFrom: shares, lightFor: words, hardFor: words }, ['least']),
    daysNeeded: closed({ days: { type: 'integer', minimum: 1, maximum: 366 }, sources }, ['days', 'sources']),
    leavesWound: { type: 'boolean' },
    sheds: { type: 'boolean' },
    instead: listOf(closed({ op: text(), set: mapOf(value) }, ['op', 'set'])),
    leaves: closed({ growing: left, standing: left, rootState: left, repotted: { type: 'boolean' }, takesBranch: { type: 'boolean' }, branchStays: { type: 'boolean' }, takesTop: { type: 'boolean' } }),
  },
  ['label', 'group', 'parameters', 'usual', 'strain'],
);

/** The schemas of the files in shared/, by the name of the file. */
export const sharedSchemas = (): Readonly<Record<string, Schema>> => ({
  facts: document('facts', 'The facts and traits that rules may look at', mapOf(factSchema)),
  operations: document('operations', 'The operations', mapOf(operationSchema)),
  phases: document('phases', 'The phases of a tree’s year', mapOf(closed({ models: listOf(text(), 1), bbch: pair, label: text(), being: text('how a text says that a tree is in it'), meaning: text(), seen: text() }, ['models', 'bbch', 'label', 'being', 'meaning', 'seen']))),
  sources: document('sources', 'The sources', mapOf(sourceSchema)),
  alerts: document('alerts', 'Dated alerts of diseases and pests by region', listOf(closed({ disease: text(), regions: listOf({ type: 'string', pattern: '^[A-Z]{2}(-[A-Z0-9]{1,3})?$' }, 1), from: monthDay, to: monthDay, box: { type: 'array', items: { type: 'number' }, minItems: 4, maxItems: 4 }, source: text(), sources, note: text() }, ['disease', 'regions', 'from', 'to']))),
  cautions: document('cautions', 'Cautions and what brings them up', mapOf(closed({ operations: named, when, sources }, ['operations', 'sources']))),
  following: document('following', 'Work that follows other work', mapOf(closed({ operations: named, when, days: { type: 'array', items: figure, minItems: 2, maxItems: 2 }, operation: done, through: listOf(text('a phase'), 1), keeps: days, sources }, ['operations', 'days', 'sources']))),
  chores: document('chores', 'Work that comes round', closed(
    { soon: days, again: days, chores: mapOf(closed({ ways: listOf(done, 1), doneBy: listOf(text('an operation'), 1), when, told: listOf(text('a fact'), 1), leadDays: days, lasts: days, keeps: days, sources }, ['ways', 'when', 'sources'])) },
    ['soon', 'again', 'chores'],
  )),
  growing: document('growing', 'Factors and usual figures by growing conditions', closed(
    {
      growing: mapOf(rate), vigour: mapOf(rate), ringMm: mapOf(rate), callusPerRing: rate, woundPerBranch: mapOf(rate), tipsToFoliage: mapOf(rate), bendStrain: closed({ firm: rate, severe: rate }, ['firm', 'severe']),
      wireMark: closed({ depthMm: rate, peak: rate }, ['depthMm', 'peak']), berthC: mapOf(pair), shelterC: mapOf({ type: 'number' }), recoveryWeeks: mapOf(pair), strain: closed({ light: rate, hard: rate, halvesInGrowingDays: rate }, ['light', 'hard', 'halvesInGrowingDays']), stubDryDays: { type: 'integer' }, twigMm: rate, sources,
    },
    ['growing', 'vigour', 'ringMm', 'callusPerRing', 'woundPerBranch', 'tipsToFoliage', 'bendStrain', 'wireMark', 'berthC', 'shelterC', 'recoveryWeeks', 'strain', 'stubDryDays', 'twigMm', 'sources'],
  )),
  aims: aimsSchema(),
  renames: document('renames', 'Ids that were published and are called otherwise now, or are gone', listOf(closed({ from: text(), to: text('left out where nothing takes its place'), since: text() }, ['from', 'since']))),
  wording: document('wording', 'The wording of messages, by id', mapOf(text())),
});

import type { Knowledge } from '../knowledge.js';
import { byKind, closed, dated, listOf, oneOf, text, type Schema } from './schema.js';
import { valueSchema } from './valueSchema.js';

type Facts = Knowledge['facts'];
type Operations = Knowledge['operations'];

/* What a text has to look like is said here, since errors say it; all other words for people stand in src/upkeep/schemas/publishedProposal.ts. */
const asKnown = { type: 'string', pattern: '^[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?$', description: 'YYYY, YYYY-MM or YYYY-MM-DD, as exact as known' } as const;
const monthDay = (which: string): Schema => ({ type: 'string', pattern: '^[0-9]{2}-[0-9]{2}$', description: `MM-DD, the usual ${which} frost of the cold season` });
const named = { type: 'string', minLength: 1, maxLength: 200 } as const;
const number = (minimum: number, maximum: number): Schema => ({ type: 'number', minimum, maximum });
const many = (items: Schema, maxItems: number): Schema => ({ ...listOf(items), maxItems });

/** What a proposal tells of one member: the facts that are given under this path, one step deep. */
export const toldUnder = (facts: Facts, under: string): Readonly<Record<string, Facts[string]>> =>
  Object.fromEntries(Object.values(facts).flatMap((fact) => {
    const step = fact.given?.startsWith(`${under}.`) ? fact.given.slice(under.length + 1) : '.';
    return step.includes('.') ? [] : [[step, fact]];
  }));

const told = (facts: Facts, under: string): Readonly<Record<string, Schema>> => Object.fromEntries(Object.entries(toldUnder(facts, under)).map(([step, fact]) => [step, valueSchema(fact, facts)]));

const entry = { date: asKnown, outcome: named, note: { type: 'string', maxLength: 2000 } } as const;

/** An operation with the parameters that it has, whatever it is called by; in a log also its date and outcome. */
const operationSchema = (facts: Facts, operations: Operations): Schema => {
  const all = Object.values(operations).map(({ id, aliases, parameters }) => ({ called: [id, ...Object.keys(aliases)], parameters }));
  return {
    type: 'object',
    properties: { op: { ...oneOf(all.flatMap(({ called }) => called)), examples: Object.keys(operations) }, branch: named, ...told(facts, 'operation'), ...entry },
    required: ['op'],
    allOf: all.map(({ called, parameters }) => ({
      if: { properties: { op: { enum: called } }, required: ['op'] },
      then: { propertyNames: { enum: ['op', ...parameters, ...Object.keys(entry)] } },
    })),
  };
};

const structureSchema = (): Schema => {
  const azimuthDeg = number(-3600, 3600);
  const mm = number(0, 50000);
  const offset = number(-50000, 50000);
  return closed({
    frontAzimuthDeg: azimuthDeg,
    trunks: many(closed({ id: named, from: named, atMm: mm, points: many(closed({ heightMm: mm, diameterMm: mm, sideMm: offset, backMm: offset }, ['heightMm', 'diameterMm']), 200) }, ['id', 'points']), 20),
    wounds: many(closed({ heightMm: mm, azimuthDeg, widthMm: mm, closed: { type: 'boolean' } }, ['heightMm', 'widthMm']), 200),
    branches: many(closed(
      {
        id: named, from: named, heightMm: mm, azimuthDeg, diameterMm: mm, branchToTrunk: number(0, 2),
        lengthMm: mm, pitchDeg: number(-90, 90), foliageShare: number(0, 1), foliageBackToMm: mm,
        budsAtMm: listOf(mm), padMm: mm, dead: { type: 'boolean' }, role: oneOf(['keep', 'sacrifice', 'leader', 'undecided']),
        faults: listOf(oneOf(['crossing', 'parallel', 'inside-curve', 'straight-up', 'straight-down', 'toward-front', 'between-trunks', 'too-low'])),
      },
      ['id', 'heightMm'],
    ), 200),
  });
};

const whereSchema = (): Schema => {
  const months = { type: 'array', items: number(-80, 60), minItems: 12, maxItems: 12 };
  return closed({
    place: named,
    latitude: number(-90, 90),
    longitude: number(-180, 180),
    elevationM: number(-450, 6000),
    monthlyMinC: months,
    monthlyMaxC: months,
    lastFrost: monthDay('last'),
    firstFrost: monthDay('first'),
    region: { type: 'string', pattern: '^[A-Z]{2}(-[A-Z0-9]{1,3})?$', description: 'ISO 3166-1 country or 3166-2 state' },
    daily: many(closed({ date: dated, minC: number(-90, 60), maxC: number(-90, 60) }, ['date', 'minC', 'maxC']), 1500),
  });
};

const treeSchema = (facts: Facts, styles: readonly string[]): Schema => {
  const traits = Object.fromEntries(Object.values(facts).filter((fact) => fact.id.startsWith('species.') && fact.type !== 'records').map((fact) => [fact.id.slice('species.'.length), valueSchema(fact, facts)]));
  return closed(
    {
      ...told(facts, 'tree'),
      id: named,
      species: named,
      cultivar: named,
      rootstock: named,
      traits: closed(traits),
      trunk: closed({ diameterMm: number(0.1, 5000), heightMm: number(1, 50000), thickenedMm: number(0, 200) }),
      lastRepotted: byKind({ string: { anyOf: [{ const: 'never' }, asKnown] } }),
      log: many({
        type: 'object',
        if: { required: ['saw'] },
        then: closed({ saw: oneOf(facts['season.phase']?.values ?? []), ...entry, date: dated }, ['saw', 'date']),
        else: { $ref: '#/$defs/operation', required: ['op', 'date'] },
      }, 2000),
      aim: closed({ ...told(facts, 'tree.aim'), style: oneOf(styles), heightMm: number(1, 50000), trunkDiameterMm: number(0.1, 5000) }),
      structure: structureSchema(),
    },
    ['species'],
  );
};

/** The schema of a proposal, as far as a check needs it: what is asked. */
export const proposalSchema = ({ facts, operations }: Pick<Knowledge, 'facts' | 'operations'>, styles: readonly string[]): Schema => ({
  ...closed(
    {
      id: { type: ['string', 'number'] },
      tree: { $ref: '#/$defs/tree' },
      operation: { $ref: '#/$defs/operation', properties: Object.fromEntries(Object.keys(entry).map((name) => [name, false])) },
      date: dated,
      where: { $ref: '#/$defs/where' },
      ignore: many(text(), 1000),
      meta: { type: 'object' },
    },
    ['tree', 'operation'],
  ),
  $defs: { operation: operationSchema(facts, operations), tree: treeSchema(facts, styles), where: whereSchema() },
});

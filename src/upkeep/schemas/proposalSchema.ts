import type { FactWord, OperationWord } from '../../knowledge/knowledge.js';
import { byKind, closed, document, listOf, oneOf, type Schema, text } from '../../knowledge/schemas/schema.js';
import { valueSchema } from '../../knowledge/schemas/valueSchema.js';

type Facts = Readonly<Record<string, FactWord>>;
type Operations = Readonly<Record<string, OperationWord>>;

const dated = { type: 'string', pattern: '^[0-9]{4}-[0-9]{2}-[0-9]{2}$', description: 'ISO 8601 date' } as const;
const asKnown = { type: 'string', pattern: '^[0-9]{4}(-[0-9]{2}(-[0-9]{2})?)?$', description: 'ISO 8601, as exact as known: year, month or day' } as const;
const monthDay = { type: 'string', pattern: '^[0-9]{2}-[0-9]{2}$', description: 'MM-DD' } as const;
const named = { type: 'string', minLength: 1, maxLength: 200 } as const;
const number = (minimum: number, maximum: number, description: string): Schema => ({ type: 'number', minimum, maximum, description });

/** What a proposal tells of one member: the facts that are given under this path, one step deep. */
const told = (facts: Facts, under: string): Readonly<Record<string, Schema>> => {
  const members: Record<string, Schema> = {};
  for (const fact of Object.values(facts)) {
    const step = fact.given?.startsWith(`${under}.`) ? fact.given.slice(under.length + 1) : undefined;
    if (step !== undefined && !step.includes('.')) members[step] = { description: fact.unit === undefined ? fact.meaning : `${fact.meaning} (${fact.unit})`, ...valueSchema(fact, facts) };
  }
  return members;
};

const entry = { date: asKnown, outcome: named, note: { type: 'string', maxLength: 2000 } } as const;

/** An operation with the parameters that it has, whatever it is called by; in a log also its date and outcome. */
const operationSchema = (facts: Facts, operations: Operations): Schema => {
  const called = (operation: OperationWord): readonly string[] => [operation.id, ...Object.keys(operation.aliases)];
  return {
    type: 'object',
    properties: {
      op: oneOf(Object.values(operations).flatMap(called), 'the operation, or a trade name of it'),
      branch: { ...named, description: 'id of a branch in tree.structure' },
      ...told(facts, 'operation'),
      ...entry,
    },
    required: ['op'],
    allOf: Object.values(operations).map((operation) => ({
      if: { properties: { op: { enum: called(operation) } }, required: ['op'] },
      then: { propertyNames: { enum: ['op', ...operation.parameters, ...Object.keys(entry)] } },
    })),
  };
};

const structureSchema = (): Schema => {
  const azimuth = { type: 'number', minimum: -3600, maximum: 3600, description: 'degrees clockwise seen from above, 0 at the front' };
  const mm = (description: string): Schema => number(0, 50000, description);
  const point = closed({ heightMm: mm('height above the soil'), diameterMm: mm('diameter over bark'), sideMm: number(-50000, 50000, 'offset to the viewer’s right'), backMm: number(-50000, 50000, 'offset away from the viewer') }, ['heightMm', 'diameterMm']);
  return closed({
    frontAzimuthDeg: azimuth,
    trunks: { ...listOf(closed({ id: named, from: named, atMm: mm('height at which it leaves the other trunk'), points: { ...listOf(point), maxItems: 200 } }, ['id', 'points'])), maxItems: 20 },
    wounds: { ...listOf(closed({ heightMm: mm('height'), azimuthDeg: azimuth, widthMm: mm('width'), closed: { type: 'boolean' } }, ['heightMm', 'widthMm'])), maxItems: 200 },
    branches: {
      ...listOf(closed(
        {
          id: named, from: named, heightMm: mm('height of the joint'), azimuthDeg: azimuth, diameterMm: mm('diameter at the joint'), branchToTrunk: number(0, 2, 'by eye, where no diameter is told'),
          lengthMm: mm('length'), pitchDeg: number(-90, 90, 'degrees above the horizontal'), foliageShare: number(0, 1, 'share of the tree’s foliage'), foliageBackToMm: mm('how far back foliage reaches, from the trunk'),
          budsAtMm: listOf(mm('distance from the trunk')), padMm: mm('width of its foliage'), dead: { type: 'boolean' }, role: oneOf(['keep', 'sacrifice', 'leader', 'undecided']),
          faults: listOf(oneOf(['crossing', 'parallel', 'inside-curve', 'straight-up', 'straight-down', 'toward-front', 'between-trunks', 'too-low'])),
        },
        ['id', 'heightMm'],
      )),
      maxItems: 200,
    },
  });
};

const whereSchema = (): Schema => {
  const months = { type: 'array', items: { type: 'number', minimum: -80, maximum: 60 }, minItems: 12, maxItems: 12 };
  return closed({
    place: { ...named, description: 'id of a bundled station' },
    latitude: number(-90, 90, 'degrees, north is positive'),
    longitude: number(-180, 180, 'degrees, east is positive'),
    elevationM: number(-450, 6000, 'metres above the sea'),
    monthlyMinC: { ...months, description: 'mean daily minimum of each month, January first' },
    monthlyMaxC: { ...months, description: 'mean daily maximum of each month, January first' },
    lastFrost: { ...monthDay, description: 'usual last frost of the cold season, MM-DD' },
    firstFrost: { ...monthDay, description: 'usual first frost of the cold season, MM-DD' },
    region: { type: 'string', pattern: '^[A-Z]{2}(-[A-Z0-9]{1,3})?$', description: 'ISO 3166-1 country or 3166-2 state' },
    daily: { ...listOf(closed({ date: dated, minC: number(-90, 60, 'lowest of the day'), maxC: number(-90, 60, 'highest of the day') }, ['date', 'minC', 'maxC'])), maxItems: 1500 },
  });
};

const treeSchema = (facts: Facts, styles: readonly string[]): Schema => {
  const traits = Object.fromEntries(Object.values(facts).filter((fact) => fact.id.startsWith('species.') && fact.type !== 'records').map((fact) => [fact.id.slice('species.'.length), valueSchema(fact, facts)]));
  const members = told(facts, 'tree');
  return closed(
    {
      ...members,
      id: named,
      species: { ...named, description: 'id, accepted name, synonym or common name; a genus or group is a good answer too' },
      cultivar: named,
      rootstock: { ...named, description: 'species whose roots it stands on, where it is grafted' },
      traits: { ...closed(traits), description: 'what its owner has seen on this very tree; beats the catalogue' },
      trunk: closed({ diameterMm: number(0.1, 5000, 'above the roots'), heightMm: number(1, 50000, 'height of the tree'), thickenedMm: number(0, 200, 'growth in diameter in its last season') }),
      lastRepotted: byKind({ string: { anyOf: [{ const: 'never' }, asKnown] } }),
      log: {
        ...listOf({
          type: 'object',
          if: { required: ['saw'] },
          then: closed({ saw: oneOf(facts['season.phase']?.values ?? []), ...entry, date: dated }, ['saw', 'date']),
          else: { $ref: '#/$defs/operation', required: ['op', 'date'] },
        }),
        maxItems: 2000,
      },
      aim: closed({ ...told(facts, 'tree.aim'), style: oneOf(styles, 'a style of shared/aims.yaml'), heightMm: number(1, 50000, 'height aimed at'), trunkDiameterMm: number(0.1, 5000, 'trunk diameter aimed at') }),
      structure: structureSchema(),
    },
    ['species'],
  );
};

/** The schema of a proposal: what is asked. */
export const proposalSchema = (facts: Facts, operations: Operations, styles: readonly string[]): Schema => {
  const body = closed(
    {
      id: { type: ['string', 'number'], description: 'yours; echoed' },
      tree: { $ref: '#/$defs/tree' },
      operation: { $ref: '#/$defs/operation', properties: Object.fromEntries(Object.keys(entry).map((name) => [name, false])) },
      date: dated,
      where: { $ref: '#/$defs/where' },
      ignore: { ...listOf(text('id of a rule that is not to be asked')), maxItems: 1000 },
      meta: { type: 'object', description: 'yours; echoed, never read' },
    },
    ['tree', 'operation'],
  );
  return document('proposal', 'A proposal: one operation on one tree, on a date, at a place', { ...body, $defs: { operation: operationSchema(facts, operations), tree: treeSchema(facts, styles), where: whereSchema() } });
};

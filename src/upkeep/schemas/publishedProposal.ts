import type { FactWord, OperationWord } from '../../knowledge/knowledge.js';
import { proposalSchema, toldUnder } from '../../knowledge/schemas/proposalSchema.js';
import { document, type Schema } from '../../knowledge/schemas/schema.js';
import { valueSchema } from '../../knowledge/schemas/valueSchema.js';

const azimuth = 'degrees clockwise seen from above, 0 at the front';

/** What each member of a proposal is, for people and editors. */
const words: Schema = {
  id: 'yours; echoed',
  ignore: { items: 'id of a rule that is not to be asked' },
  meta: 'yours; echoed, never read',
  $defs: {
    operation: { op: 'the operation, or a trade name of it', branch: 'id of a branch in tree.structure' },
    tree: {
      species: 'id, accepted name, synonym or common name; a genus or group is a good answer too',
      rootstock: 'species whose roots it stands on, where it is grafted',
      traits: 'what its owner has seen on this very tree; beats the catalogue',
      trunk: { diameterMm: 'above the roots', heightMm: 'height of the tree', thickenedMm: 'growth in diameter in its last season' },
      aim: { style: 'a style of shared/aims.yaml', heightMm: 'height aimed at', trunkDiameterMm: 'trunk diameter aimed at' },
      structure: {
        frontAzimuthDeg: azimuth,
        trunks: { items: { atMm: 'height at which it leaves the other trunk', points: { items: { heightMm: 'height above the soil', diameterMm: 'diameter over bark', sideMm: 'offset to the viewer’s right', backMm: 'offset away from the viewer' } } } },
        wounds: { items: { heightMm: 'height', azimuthDeg: azimuth, widthMm: 'width' } },
        branches: {
          items: {
            heightMm: 'height of the joint', azimuthDeg: azimuth, diameterMm: 'diameter at the joint', branchToTrunk: 'by eye, where no diameter is told', lengthMm: 'length', pitchDeg: 'degrees above the horizontal',
            foliageShare: 'share of the tree’s foliage', foliageBackToMm: 'how far back foliage reaches, from the trunk', budsAtMm: { items: 'distance from the trunk' }, padMm: 'width of its foliage',
          },
        },
      },
    },
    where: {
      place: 'id of a bundled station', latitude: 'degrees, north is positive', longitude: 'degrees, east is positive', elevationM: 'metres above the sea',
      monthlyMinC: 'mean daily minimum of each month, January first', monthlyMaxC: 'mean daily maximum of each month, January first',
      daily: { items: { minC: 'lowest of the day', maxC: 'highest of the day' } },
    },
  },
};

/** A schema with words at its members, at what its lists hold, and at its parts by name. */
const withWords = (schema: Schema, said: unknown): Schema => {
  if (said === undefined) return schema;
  if (typeof said === 'string') return { ...schema, description: said };
  const { items, $defs, ...members } = said as Schema;
  const named = (parts: unknown, of: Schema): unknown => Object.fromEntries(Object.entries(parts as Readonly<Record<string, Schema>>).map(([name, part]) => [name, withWords(part, of[name])]));
  return Object.fromEntries(Object.entries(schema).map(([keyword, part]) => [
    keyword, keyword === 'properties' ? named(part, members) : keyword === 'items' ? withWords(part as Schema, items) : keyword === '$defs' ? named(part, $defs as Schema) : part,
  ]));
};

/** A schema whose members are facts, with what each fact means; members that are told otherwise than as the fact have words of their own, or none. */
const withMeanings = (schema: Schema, facts: Readonly<Record<string, FactWord>>, under: string): Schema => {
  const told = toldUnder(facts, under);
  return {
    ...schema,
    properties: Object.fromEntries(Object.entries(schema['properties'] as Readonly<Record<string, Schema>>).map(([name, part]) => {
      const fact = told[name];
      return [name, fact === undefined || JSON.stringify(part) !== JSON.stringify(valueSchema(fact, facts)) ? part : { description: fact.unit === undefined ? fact.meaning : `${fact.meaning} (${fact.unit})`, ...part }];
    })),
  };
};

/** The published schema of a proposal: what the check needs, and words for people. */
export const publishedProposal = (facts: Readonly<Record<string, FactWord>>, operations: Readonly<Record<string, OperationWord>>, styles: readonly string[]): Schema => {
  const { $defs, ...body } = withWords(proposalSchema({ facts, operations }, styles), words);
  const { operation, tree, where } = $defs as Readonly<Record<'operation' | 'tree' | 'where', Schema>>;
  const meant = withMeanings(tree, facts, 'tree');
  const members = meant['properties'] as Readonly<Record<string, Schema>>;
  return document('proposal', 'A proposal: one operation on one tree, on a date, at a place', {
    ...body,
    $defs: { operation: withMeanings(operation, facts, 'operation'), tree: { ...meant, properties: { ...members, aim: withMeanings(members['aim']!, facts, 'tree.aim') } }, where },
  });
};

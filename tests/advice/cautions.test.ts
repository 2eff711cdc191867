import { describe, expect, test } from 'vitest';
import { advisor, shipped, stations } from '../shipped.js';
import fc from 'fast-check';
import { plausibleProposal } from '../laws/plausibleProposal.js';

/* Design: cautions stand whatever the verdict. This table is written by hand from the dangers of each kind of work, not from shared/cautions.yaml. */

const cutting = ['blades'];
const potting = ['potting-dust', 'soil-wounds'];

const always: Readonly<Record<string, readonly string[]>> = {
  'remove-branch': cutting,
  'clean-stub': cutting,
  'cut-back': cutting,
  'trunk-chop': cutting,
  'thin-shoots': cutting,
  'trim': cutting,
  'remove-suckers': cutting,
  'remove-flowers': [],
  'pinch': [],
  'candle-cut': cutting,
  'candle-pinch': [],
  'needle-pluck': [],
  'defoliate': cutting,
  'wire': ['eyes-wire'],
  'unwire': ['blades', 'eyes-wire'],
  'strip-bark': ['blades', 'eyes-carving', 'lime-sulphur'],
  'seal-wound': ['sealer-vapour'],
  'graft': ['blades', 'breeders-rights'],
  'repot': ['blades', ...potting, 'heavy'],
  'slip-pot': [...potting, 'heavy'],
  'trim-escaped-roots': ['blades', ...potting],
  'divide': ['blades', ...potting, 'breeders-rights'],
  'collect': ['blades', ...potting, 'heavy', 'permission'],
  'plant-out': [...potting, 'heavy'],
  'take-cuttings': ['blades', 'potting-dust', 'sphagnum', 'breeders-rights'],
  'air-layer': ['blades', 'sphagnum', 'breeders-rights'],
  'sow': ['potting-dust'],
  'overwinter': ['heavy'],
  'move-outdoors': ['heavy'],
  'move-indoors': ['heavy'],
  'feed': ['feed-label'],
};

/** Cautions that hang on the tree or on how the work is done. */
const sometimes = ['sealer-on-cut', 'heater', 'disinfect', 'diseased-prunings', 'quarantine', 'invasive', 'protected', 'sap-burns', 'sap-irritates', 'thorns', 'dust', 'poison-people', 'poison-pets', 'poison-livestock', 'poison-not-recorded'];

const idsOf = async (proposal: unknown): Promise<readonly string[]> => (await advisor.assess(proposal)).cautions.map((caution) => caution.id);

test('the table names every operation', () => {
  expect(Object.keys(always).sort()).toEqual(Object.keys(shipped.operations).sort());
  expect(Object.keys(always)).toHaveLength(31);
});

describe('each operation has its cautions under every verdict', () => {
  test.each(Object.entries(always))('%s: %s', async (op, expected) => {
    const verdicts = new Map<string, number>();
    const species = ['juniperus-chinensis', 'acer-palmatum', 'pinus-thunbergii', 'ficus-microcarpa', 'prunus-mume', 'olea-europaea', 'larix-decidua', 'adenium-obesum'];
    for (const proposal of fc.sample(plausibleProposal(shipped, stations, { op, species, told: 3 }), { numRuns: 400, seed: 31 })) {
      const { verdict } = await advisor.verdict(proposal);
      if ((verdicts.get(verdict) ?? 0) >= 2) continue;
      verdicts.set(verdict, (verdicts.get(verdict) ?? 0) + 1);
      const ids = await idsOf(proposal);
      expect(ids.filter((id) => !sometimes.includes(id)).sort(), verdict).toEqual([...expected].sort());
      if (verdicts.size === 3) break;
    }
    expect(verdicts.size, `only ${[...verdicts.keys()].join(', ')} met`).toBeGreaterThanOrEqual(2);
  }, 60_000);
});

describe('each hazard of a tree has its caution', () => {
  const asked = (op: string, traits: Readonly<Record<string, unknown>>, more: Readonly<Record<string, unknown>> = {}): unknown => ({ tree: { species: 'acer-palmatum', traits, ...more }, operation: { op } });

  /** Work that opens the plant: sap gets on hands. */
  const opening = ['remove-branch', 'clean-stub', 'cut-back', 'trunk-chop', 'thin-shoots', 'trim', 'remove-suckers', 'pinch', 'defoliate', 'strip-bark', 'graft', 'take-cuttings', 'air-layer', 'repot', 'divide', 'collect'];

  test.each(opening)('sap that burns or irritates, at %s', async (op) => {
    expect(await idsOf(asked(op, { 'hazards.skin': 'burns' }))).toContain('sap-burns');
    expect(await idsOf(asked(op, { 'hazards.skin': 'irritant' }))).toContain('sap-irritates');
    expect(await idsOf(asked(op, { 'hazards.skin': 'not-recorded' }))).not.toContain('sap-burns');
  });

  test('thorns, whatever is done', async () => {
    for (const op of Object.keys(shipped.operations)) {
      expect(await idsOf(asked(op, { 'hazards.thorns': true })), op).toContain('thorns');
      expect(await idsOf(asked(op, { 'hazards.thorns': false })), op).not.toContain('thorns');
    }
  });

  test('poison to people, pets and livestock, each for itself, whatever is done', async () => {
    for (const op of Object.keys(shipped.operations)) {
      const ids = await idsOf(asked(op, { 'hazards.eaten': ['people', 'livestock'] }));
      expect(ids, op).toEqual(expect.arrayContaining(['poison-people', 'poison-livestock']));
      expect(ids, op).not.toContain('poison-pets');
      expect(ids, op).not.toContain('poison-not-recorded');
      expect(await idsOf(asked(op, { 'hazards.eaten': ['pets'] })), op).toContain('poison-pets');
    }
  });

  test('poison that is not recorded is said to be not recorded, and never to be safe', async () => {
    for (const op of Object.keys(shipped.operations)) {
      const { cautions } = await advisor.assess(asked(op, { 'hazards.eaten': [] }));
      const said = cautions.find((caution) => caution.id === 'poison-not-recorded');
      expect(said, op).toBeDefined();
      expect(said!.text).toMatch(/not recorded/);
      expect(said!.text).toMatch(/not the same as safe/);
    }
  });

  test('every species says one of both: whom it poisons, or that it is not recorded', async () => {
    for (const species of Object.values(shipped.species)) {
      const ids = await idsOf({ tree: { species: species.id }, operation: { op: 'pinch' } });
      expect(ids.some((id) => id.startsWith('poison-')), species.id).toBe(true);
      expect(ids.includes('poison-not-recorded'), species.id).toBe(!ids.some((id) => ['poison-people', 'poison-pets', 'poison-livestock'].includes(id)));
    }
  });

  test('dust of sawn wood', async () => {
    for (const op of ['remove-branch', 'trunk-chop', 'strip-bark']) expect(await idsOf(asked(op, { 'hazards.dust': true })), op).toContain('dust');
  });

  test('diseases that blades carry, and the prunings of a sick tree', async () => {
    for (const risk of ['fire-blight', 'silver-leaf', 'canker', 'oak-wilt', 'elm-disease', 'box-blight']) expect(await idsOf(asked('cut-back', { 'pruning.diseaseRisks': [risk] })), risk).toContain('disinfect');
    expect(await idsOf(asked('cut-back', { 'pruning.diseaseRisks': [] }))).not.toContain('disinfect');
    expect(await idsOf(asked('cut-back', {}, { health: 'ailing' }))).toEqual(expect.arrayContaining(['disinfect', 'diseased-prunings']));
  });

  test('a sealed cut gives off vapour', async () => {
    for (const op of ['remove-branch', 'cut-back', 'trunk-chop']) {
      expect(await idsOf({ tree: { species: 'acer-palmatum' }, operation: { op, sealed: true } })).toContain('sealer-on-cut');
      expect(await idsOf({ tree: { species: 'acer-palmatum' }, operation: { op, sealed: false } })).not.toContain('sealer-on-cut');
    }
  });

  test('a heater in a closed frame or glass house', async () => {
    expect(await idsOf({ tree: { species: 'acer-palmatum' }, operation: { op: 'overwinter', placement: 'cold-frame' } })).toContain('heater');
    expect(await idsOf({ tree: { species: 'acer-palmatum' }, operation: { op: 'move-indoors', to: 'greenhouse' } })).toContain('heater');
    expect(await idsOf({ tree: { species: 'acer-palmatum' }, operation: { op: 'overwinter', placement: 'outdoors-exposed' } })).not.toContain('heater');
  });

  test('a berth that is not told could be one with a heater, and is warned of', async () => {
    expect(await idsOf({ tree: { species: 'acer-palmatum' }, operation: { op: 'overwinter' } })).toContain('heater');
  });
});

describe('law', () => {
  const listed = (what: RegExp): readonly string[] => Object.values(shipped.species).filter((species) => (species.traits['hazards.regulated']?.is as readonly Readonly<Record<string, string>>[] | undefined)?.some((record) => what.test(String(record['what'])))).map((species) => species.id);

  test('a species on a list of invasive plants is warned of before it is planted out or its prunings dumped', async () => {
    const species = listed(/invasive/);
    expect(species.length).toBeGreaterThan(0);
    for (const id of species.slice(0, 10)) for (const op of ['plant-out', 'cut-back', 'sow']) expect(await idsOf({ tree: { species: id }, operation: { op } }), id).toContain('invasive');
  });

  test('a species under rules of trade or protection is warned of before it is collected', async () => {
    const species = listed(/protected|trade|cites/i);
    expect(species.length).toBeGreaterThan(0);
    for (const id of species.slice(0, 10)) expect(await idsOf({ tree: { species: id }, operation: { op: 'collect' } }), id).toContain('protected');
  });

  test('a host under quarantine is warned of before it is carried', async () => {
    const species = listed(/quarantine|import|passport/);
    expect(species.length).toBeGreaterThan(0);
    for (const id of species.slice(0, 10)) expect(await idsOf({ tree: { species: id }, operation: { op: 'collect' } }), id).toContain('quarantine');
  });
});

test('every caution has words of its own, gives no dose, and names no product', () => {
  for (const id of Object.keys(shipped.cautions)) {
    const text = shipped.wording[`caution.${id}`];
    expect(text, id).toBeDefined();
    expect(text, id).not.toMatch(/\d+\s*(ml|mg|g|l|%|drops|ppm|litre|gram|teaspoon)\b/i);
    expect(text, id).not.toMatch(/[®™]/);
  }
  expect([...new Set(Object.values(always).flat()), ...sometimes].sort()).toEqual(Object.keys(shipped.cautions).sort());
});

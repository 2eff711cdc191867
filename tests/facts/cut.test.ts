import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { factsOf } from './factsOf.js';

const conifer = 'juniperus-chinensis';
const broadleaf = 'acer-palmatum';

const below = async (species: string, operation: Readonly<Record<string, unknown>>): Promise<unknown> => {
  const fact = (await factsOf({ tree: { species }, operation: { op: 'cut-back', ...operation } }))('cut.below');
  return fact.value ?? [...(fact.among as readonly string[])].sort();
};

describe('what is left below a cut', () => {
  test.each([
    ['green below the cut is foliage, whatever the wood', broadleaf, { foliageLeft: true, woodAge: 'old' }, 'foliage'],
    ['buds that were counted are buds', broadleaf, { foliageLeft: false, budsLeft: 2 }, 'buds'],
    ['of buds that were counted on an evergreen, green may yet stand beside them', conifer, { budsLeft: 1 }, ['buds', 'foliage']],
    ['buds that were counted on a tree that sheds its leaves carry what is green', broadleaf, { budsLeft: 1, foliageLeft: true }, 'buds'],
    ['where none was counted beside green, it still stands on buds', broadleaf, { budsLeft: 0, foliageLeft: true }, 'buds'],
    ['no green and no buds is bare', broadleaf, { foliageLeft: false, budsLeft: 0 }, 'bare'],
    ['no green on old wood is bare', conifer, { foliageLeft: false, woodAge: 'old' }, 'bare'],
    ['no green on last year’s wood is buds', broadleaf, { foliageLeft: false, woodAge: 'last-year' }, 'buds'],
    ['no green on this year’s wood is buds', broadleaf, { foliageLeft: false, woodAge: 'this-year' }, 'buds'],
    ['a leafless tree with no bud left is bare', broadleaf, { budsLeft: 0 }, 'bare'],
    ['an evergreen with no bud left may still have foliage', conifer, { budsLeft: 0 }, ['bare', 'foliage']],
    ['nothing told of old wood may be anything', broadleaf, { woodAge: 'old' }, ['bare', 'buds', 'foliage']],
    ['nothing told at all may be anything', broadleaf, {}, ['bare', 'buds', 'foliage']],
  ] as const)('%s', async (_, species, operation, expected) => {
    expect(await below(species, operation)).toEqual(expected);
  });

  test('nodes count their buds: two on opposite leaves, one on alternate', async () => {
    const buds = async (species: string): Promise<unknown> => (await factsOf({ tree: { species }, operation: { op: 'cut-back', nodesLeft: 2 } }))('cut.budsLeft').value;
    expect(await buds('acer-palmatum')).toBe(4);
    expect(await buds('ulmus-parvifolia')).toBe(2);
  });
});

test('whether new shoots follow is the species’ answer only where nothing is left', async () => {
  const rebudding = async (species: string, foliageLeft: boolean): Promise<unknown> => (await factsOf({ tree: { species }, operation: { op: 'cut-back', foliageLeft, woodAge: 'old' } }))('cut.rebudding').value;
  expect(await rebudding('pinus-thunbergii', true)).toBe('sure');
  expect(await rebudding('pinus-thunbergii', false)).toBe('none');
});

describe('wounds', () => {
  const wound = async (operation: Readonly<Record<string, unknown>>, tree: Readonly<Record<string, unknown>> = {}): Promise<{ readonly width: number; readonly years: number }> => {
    const read = await factsOf({ tree: { species: broadleaf, vigour: 'steady', growing: 'bonsai-pot', ...tree }, operation: { op: 'remove-branch', finish: 'collar', ...operation } });
    return { width: read('wound.widthMm').value as number, years: read('wound.closureYears').value as number };
  };

  test('a flush cut is wider than the branch, a collar cut as wide', async () => {
    expect((await wound({ branchDiameterMm: 10 })).width).toBe(10);
    expect((await wound({ branchDiameterMm: 10, finish: 'flush' })).width).toBeGreaterThan(10);
  });

  test('a branch as a share of a measured trunk has a width', async () => {
    expect((await wound({ branchToTrunk: 0.5 }, { trunk: { diameterMm: 40 } })).width).toBe(20);
  });

  test('a shoot of last year whose size nobody told is taken for a twig, an old branch for nothing', async () => {
    const size = async (woodAge: string): Promise<unknown> => {
      const { state, value } = (await factsOf({ tree: { species: broadleaf }, operation: { op: 'cut-back', woodAge, budsLeft: 2 } }))('wound.widthMm');
      return [state, value];
    };
    expect(await size('last-year')).toEqual(['estimated', 4]);
    expect(await size('old')).toEqual(['unknown', undefined]);
  });

  test('a branch and a trunk give their ratio, and one without the other does not', async () => {
    const ratio = async (tree: Readonly<Record<string, unknown>>): Promise<unknown> => (await factsOf({ tree: { species: broadleaf, ...tree }, operation: { op: 'remove-branch', branchDiameterMm: 10 } }))('cut.branchToTrunk').value;
    expect(await ratio({ trunk: { diameterMm: 40 } })).toBe(0.25);
    expect(await ratio({})).toBeUndefined();
  });

  test('a wider wound never closes sooner', async () => {
    await fc.assert(fc.asyncProperty(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 300 }), async (one, other) => {
      const [narrow, wide] = [Math.min(one, other), Math.max(one, other)];
      expect((await wound({ branchDiameterMm: wide })).years).toBeGreaterThanOrEqual((await wound({ branchDiameterMm: narrow })).years);
    }), { numRuns: 100 });
  });

  test('a weaker tree never closes sooner, nor one in a smaller pot, nor one that thickened less', async () => {
    const years = async (tree: Readonly<Record<string, unknown>>): Promise<number> => (await wound({ branchDiameterMm: 20 }, tree)).years;
    expect(await years({ vigour: 'weak' })).toBeGreaterThan(await years({ vigour: 'steady' }));
    expect(await years({ vigour: 'steady' })).toBeGreaterThan(await years({ vigour: 'strong' }));
    expect(await years({ growing: 'bonsai-pot' })).toBeGreaterThan(await years({ growing: 'deep-container' }));
    expect(await years({ growing: 'deep-container' })).toBeGreaterThan(await years({ growing: 'ground' }));
    expect(await years({ trunk: { thickenedMm: 1 } })).toBeGreaterThan(await years({ trunk: { thickenedMm: 3 } }));
  });
});

import { describe, expect, test } from 'vitest';
import { levelCloseness } from '../../../src/structure/levelCloseness.js';
import { pipeShares } from '../../../src/structure/foliageShares.js';
import { readStructure } from '../../../src/structure/readStructure.js';
import { severity } from '../../../src/structure/severity.js';
import { thickAfter } from '../../../src/structure/thickening.js';
import { whorlYears } from '../../../src/structure/whorlYears.js';
import { factsOf } from '../../facts/factsOf.js';
import { advisor, shipped } from '../../shipped.js';

type Branch = Readonly<Record<string, unknown>> & { readonly id: string; readonly heightMm: number };

/** A tree of 500 mm on a trunk that is 40 mm thick all the way, so that ratios are plain. */
const tree = (branches: readonly Branch[], rest: object = {}): object => ({
  species: 'acer-rubrum', trunk: { heightMm: 500 },
  structure: { trunks: [{ id: 'trunk', points: [{ heightMm: 0, diameterMm: 40 }, { heightMm: 400, diameterMm: 40 }] }], branches }, ...rest,
});

const fires = async (rule: string, asked: object, operation: object): Promise<boolean> => {
  const { findings } = await advisor.assess({ tree: asked, operation, date: '2026-06-20', where: { latitude: 45, longitude: -93 } });
  return findings.some((finding) => finding.rule === rule && finding.fires === 'certainly');
};

const low = (diameterMm: number, rest: object = {}): Branch => ({ id: 'low', heightMm: 150, azimuthDeg: 90, diameterMm, ...rest });
const remove = { op: 'remove-branch', branch: 'low', finish: 'collar', foliageShare: 0.05 };
const wire = { op: 'wire', branch: 'low', bend: 'gentle' };

/* Each row: a figure that was read, who published it, the rule that rests on it, and a branch just inside and just outside. */
describe('ratios of branch to trunk that were published', () => {
  test.each([
    ['keep main branches below half the trunk', 'University of Florida, structural pruning plan (2010); Arboriculture Australia, rescue manual p. 139', 'cut/thick-branch', remove, 20, 20.4],
    ['manage red maple branches to stay below 0.60', 'Dahle et al. 2022, Forests 13:1007', 'structure/rivals-leader', wire, 24, 24.4],
    ['red maple unions behave as co-dominant from 0.83', 'Dahle et al. 2022, Forests 13:1007', 'wound/co-dominant', remove, 33.2, 33.6],
  ] as const)('%s (%s)', async (_, __, rule, operation, inside, outside) => {
    expect(await fires(rule, tree([low(inside)]), operation)).toBe(false);
    expect(await fires(rule, tree([low(outside)]), operation)).toBe(true);
  });
});

test('a pruning is severe above a third of the trunk’s section: BS 3998, draft of 2008, annex E (quoted)', async () => {
  expect(severity([0.577 * 40], 40)).toBeCloseTo(1 / 3, 3);
  expect(await fires('wound/area-severe', tree([low(22.9)]), remove)).toBe(false);
  expect(await fires('wound/area-severe', tree([low(23.1)]), remove)).toBe(true);
});

describe('share of the ring lost at one level', () => {
  const scarred = (widthMm: number, diameterMm: number): object => {
    const plain = tree([low(diameterMm)]) as { readonly structure: object };
    return { ...plain, structure: { ...plain.structure, wounds: [{ heightMm: 150, azimuthDeg: 270, widthMm }] } };
  };

  test('below a quarter no lasting harm is expected: NC State, damage to the trunk', async () => {
    /* Two wounds of asin(w/40)/pi each: 15.0 mm is 0.122, 15.6 mm is 0.127. */
    expect(await fires('wound/girth-quarter', scarred(15, 15), remove)).toBe(false);
    expect(await fires('wound/girth-quarter', scarred(15.6, 15.6), remove)).toBe(true);
  });

  test('above half vigour is seriously reduced: NC State, damage to the trunk; may survive if half is sound: Minnesota, ask.extension 344880', async () => {
    expect(await fires('wound/girth-half', scarred(28, 28), remove)).toBe(false);
    expect(await fires('wound/girth-half', scarred(28.6, 28.6), remove)).toBe(true);
  });
});

test('more than half of the foliage belongs on the lower two thirds: Harris 1980, J. Arboric. 6(4):105; ANSI A300, 1995', async () => {
  const aim = { aim: { trunkDiameterMm: 80 } };
  const with_ = (foliageShare: number): object => tree([low(10, { foliageShare: 0.2 }), { id: 'mid', heightMm: 300, azimuthDeg: 270, diameterMm: 10, foliageShare }, { id: 'high', heightMm: 390, azimuthDeg: 180, diameterMm: 10, foliageShare: 0.8 - foliageShare }], aim);
  expect(await fires('structure/low-foliage-gone', with_(0.41), { ...remove, foliageShare: 0.2 })).toBe(false);
  expect(await fires('structure/low-foliage-gone', with_(0.39), { ...remove, foliageShare: 0.2 })).toBe(true);
});

test('a crown over less than 30 % of the height goes with low vigour: DeYoung 2016, Forest Measurements 5.3', async () => {
  const above = (heightMm: number): object => tree([low(8), { id: 'high', heightMm, azimuthDeg: 200, diameterMm: 8 }]);
  expect(await fires('structure/little-crown-left', above(350), remove)).toBe(false);
  expect(await fires('structure/little-crown-left', above(352), remove)).toBe(true);
});

test('main branches stand at least 3 % of the height apart: treeclimbersonline.net, selection of permanent branches', () => {
  const structure = (gapMm: number): ReturnType<typeof readStructure> => readStructure({ trunks: [{ id: 't', points: [{ heightMm: 0, diameterMm: 20 }, { heightMm: 1000, diameterMm: 5 }] }], branches: [{ id: 'a', heightMm: 300, diameterMm: 4 }, { id: 'b', heightMm: 300 + gapMm, diameterMm: 4 }] }, { trunk: { heightMm: 1000 } });
  const apart = (gapMm: number): number => { const read = structure(gapMm); return levelCloseness(read, read.branches[0]!, read.branches[1]!)!; };
  expect(apart(29)).toBeLessThan(1);
  expect(apart(30)).toBe(1);
});

test('branches in one group are a fault, and choke what leads above them: UF/IFAS, structural pruning (choked); Urban Tree Foundation, practice 6', async () => {
  const group = (members: number): object => tree(Array.from({ length: members }, (_, i) => ({ id: i === 0 ? 'low' : `w${i}`, heightMm: 150, azimuthDeg: 90 * i, diameterMm: 16 })));
  expect(await fires('structure/whorl-will-swell', group(1), wire)).toBe(false);
  expect(await fires('structure/whorl-will-swell', group(4), wire)).toBe(true);
});

test('one whorl is one year: DeYoung 2016, Forest Measurements 4.2', () => {
  const whorls = (count: number): readonly { readonly heightMm: number; readonly members: number }[] => Array.from({ length: count }, (_, i) => ({ heightMm: 50 * (i + 1), members: 5 }));
  expect(whorlYears(whorls(7))[0] - whorlYears(whorls(6))[0]).toBe(1);
});

test('diameters hold to their rule with a power between 1.8 and 2.3, which moves a share by a few hundredths: Eloy 2011, arXiv 1105.2591', () => {
  const share = (power: number): number => pipeShares([9, 7, 6, 5, 8], power)[0]!;
  expect(share(2.3) - share(1.8)).toBeLessThan(0.05);
});

test('in suppressed maple and oak the section of a ring is constant, so rings fall as one over the root of their number: Prothero 1997', () => {
  /* Four times as many rings, half as wide. */
  const ring = (n: number): number => thickAfter(0, 100, n) - thickAfter(0, 100, n - 1);
  for (const n of [10, 20, 40]) expect((ring(4 * n) / ring(n)) * 2).toBeCloseTo(1, 1);
});

test('green wood gives at 0.45 to 0.60 % of strain, strength over stiffness of ten American species: ASTM D2555; a bend called firm lies beyond that', () => {
  expect(shipped.growing.bendStrain['firm']).toBeGreaterThan(0.006);
});

test('callus at the edge exceeds the growth of the ring, so a wound closes sooner than its width over two rings: Neely 1988, J. Arboric. 14(6):148; and no faster than 17.5 mm a season: Neely 1979, 5(6):135', async () => {
  for (const [widthMm, ringMm] of [[20, 1.5], [12, 2]] as const) {
    const years = (await factsOf({ tree: { species: 'acer-rubrum', trunk: { diameterMm: 60, thickenedMm: 2 * ringMm } }, operation: { op: 'remove-branch', finish: 'collar', branchDiameterMm: widthMm } }))('wound.closureYears').value as number;
    expect(years).toBeLessThan(widthMm / (2 * ringMm));
    expect(years).toBeGreaterThan(widthMm / 17.5);
  }
});

/* Widths closed in a season at strong, moderate and modest growth, 17.5, 12.7 and 9.5 mm: Neely 1979, J. Arboric. 5(6):135 (read in abstract). How thick his rings were it does not say: the range of seasons begun has to hold his. */
test.each([['strong', 20, 2], ['steady', 20, 2], ['weak', 20, 3], ['strong', 40, 3], ['steady', 40, 4], ['weak', 40, 5]] as const)('in the ground, at %s growth, a wound of %i mm closes in %i seasons', async (vigour, branchDiameterMm, seasons) => {
  const { expect: { closureYears } } = await advisor.assess({ tree: { species: 'acer-rubrum', growing: 'ground', vigour, trunk: { diameterMm: 80 } }, operation: { op: 'remove-branch', finish: 'collar', branchDiameterMm } });
  const [least, most] = closureYears as readonly [number, number];
  expect(Math.ceil(least)).toBeLessThanOrEqual(seasons);
  expect(Math.ceil(most)).toBeGreaterThanOrEqual(seasons);
});

/* Between the same widths a season as the soonest, and one ring a side as the latest (worked by hand: 20 mm at rings of 1.5 mm in 2 to 5 years, 12 mm at 2 mm in 1 to 3): Neely 1979 and 1988. */
test.each([[20, 1.5, 2, 5], [12, 2, 1, 3]] as const)('a wound of %f mm at rings of %f mm closes in %i to %i years, as far as both know', async (branchDiameterMm, ringMm, soonest, latest) => {
  const { expect: { closureYears } } = await advisor.assess({ tree: { species: 'acer-rubrum', trunk: { diameterMm: 80, thickenedMm: 2 * ringMm } }, operation: { op: 'remove-branch', finish: 'collar', branchDiameterMm } });
  const [least, most] = closureYears as readonly [number, number];
  expect(least).toBeLessThan(latest);
  expect(most).toBeGreaterThan(soonest);
  expect(most).toBeLessThanOrEqual(branchDiameterMm / (2 * ringMm));
});

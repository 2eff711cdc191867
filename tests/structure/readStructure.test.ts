import { describe, expect, test } from 'vitest';
import { SparebudError } from '../../src/knowledge/error.js';
import { readStructure } from '../../src/structure/readStructure.js';
import type { Branch, ToldStructure } from '../../src/structure/tree.js';

const branchOf = (told: ToldStructure, id: string, trunk = {}): Branch => readStructure(told, { trunk }).branches.find((branch) => branch.id === id)!;
const issues = (told: ToldStructure, trunk = {}): readonly string[] => {
  try {
    readStructure(told, { trunk });
    return [];
  } catch (cause) {
    if (!(cause instanceof SparebudError)) throw cause;
    return cause.issues.map(({ code, path }) => `${code} ${path}`);
  }
};

describe('a branch beside its trunk', () => {
  test('is measured against the trunk just above it, straight between the told points', () => {
    const told = { trunks: [{ id: 't', points: [{ heightMm: 60, diameterMm: 40 }, { heightMm: 150, diameterMm: 34 }, { heightMm: 250, diameterMm: 28 }] }], branches: [{ id: 'a', heightMm: 120, diameterMm: 12 }, { id: 'b', heightMm: 190, diameterMm: 17 }] };
    expect(branchOf(told, 'a').aspectRatio?.value).toBeCloseTo(0.333, 3);
    expect(branchOf(told, 'b').aspectRatio?.value).toBeCloseTo(0.538, 3);
    expect(branchOf(told, 'a').aspectRatio?.certainty).toBe('worked-out');
  });

  test('has a diameter by eye that is an estimate, a fifth either way', () => {
    const branch = branchOf({ trunks: [{ id: 't', points: [{ heightMm: 0, diameterMm: 40 }, { heightMm: 200, diameterMm: 20 }] }], branches: [{ id: 'a', heightMm: 100, branchToTrunk: 0.5 }] }, 'a');
    expect(branch.diameterMm).toEqual({ value: 15, atLeast: 12, atMost: 18, certainty: 'estimated' });
  });

  test('where no points were told, is measured against a cone that is an estimate', () => {
    const { aspectRatio } = branchOf({ branches: [{ id: 'a', heightMm: 200, diameterMm: 8 }] }, 'a', { diameterMm: 40, heightMm: 400 });
    expect(aspectRatio?.certainty).toBe('estimated');
    expect(aspectRatio?.value).toBeCloseTo(8 / 22, 3);
    expect(aspectRatio!.atLeast).toBeLessThan(0.3);
    expect(aspectRatio!.atMost).toBeGreaterThan(0.5);
  });

  test('has no ratio where nothing tells the trunk, and none is made up', () => {
    const branch = branchOf({ branches: [{ id: 'a', heightMm: 200, diameterMm: 8 }] }, 'a');
    expect(branch.aspectRatio).toBeUndefined();
    expect(branch.foliageShare?.certainty).toBe('estimated');
    expect(branchOf({ branches: [{ id: 'a', heightMm: 200 }] }, 'a').foliageShare).toBeUndefined();
  });
});

describe('directions', () => {
  test('count from the front, whatever they are told from', () => {
    expect(branchOf({ frontAzimuthDeg: 200, branches: [{ id: 'a', heightMm: 10, azimuthDeg: 110 }] }, 'a').azimuthDeg).toBe(270);
    expect(branchOf({ branches: [{ id: 'a', heightMm: 10, azimuthDeg: -90 }] }, 'a').azimuthDeg).toBe(270);
    expect(branchOf({ branches: [{ id: 'a', heightMm: 10, azimuthDeg: 725 }] }, 'a').azimuthDeg).toBe(5);
  });
});

describe('foliage that was not told', () => {
  const points = [{ heightMm: 0, diameterMm: 16 }, { heightMm: 400, diameterMm: 8 }, { heightMm: 500, diameterMm: 8 }];
  const told = { trunks: [{ id: 't', points }], branches: [9, 7, 6, 5].map((diameterMm, i) => ({ id: `b${diameterMm}`, heightMm: 370 + 10 * i, diameterMm })) };

  test('follows the sections of the branches and the top, in a wide range', () => {
    const share = branchOf(told, 'b9').foliageShare!;
    expect(share.value).toBeCloseTo(0.318, 3);
    expect([share.atLeast, share.atMost].map((each) => Math.round(each * 100))).toEqual([22, 43]);
    expect(share.certainty).toBe('estimated');
  });

  test('is what told shares leave over', () => {
    const some = { ...told, branches: told.branches.map((branch) => (branch.id === 'b9' ? { ...branch, foliageShare: 0.5 } : branch)) };
    expect(branchOf(some, 'b9').foliageShare).toEqual({ value: 0.5, atLeast: 0.5, atMost: 0.5, certainty: 'told' });
    expect(branchOf(some, 'b7').foliageShare?.value).toBeCloseTo((0.5 * 49) / 174, 3);
  });

  test('is none on a dead branch, and a branch of unknown thickness has no share', () => {
    const dead = { ...told, branches: [...told.branches, { id: 'x', heightMm: 300, diameterMm: 9, dead: true }, { id: 'y', heightMm: 310 }] };
    expect(branchOf(dead, 'x').foliageShare?.value).toBe(0);
    expect(branchOf(dead, 'y').foliageShare).toBeUndefined();
    expect(branchOf(dead, 'b9').foliageShare!.value).toBeLessThan(0.318);
    expect(branchOf(dead, 'b9').foliageShare!.atMost).toBeGreaterThan(0.42);
  });

  test('of a side branch is part of its bearer’s', () => {
    const forked = { ...told, branches: [...told.branches, { id: 'side', from: 'b9', heightMm: 372, diameterMm: 6 }] };
    expect(branchOf(forked, 'side').foliageShare?.value).toBeCloseTo(0.318 * (36 / 81), 2);
    expect(branchOf(forked, 'side').trunkId).toBe('t');
    expect(branchOf(forked, 'b9').foliageShare?.value).toBeCloseTo(0.318, 3);
  });
});

describe('what cannot be is an error that names the field', () => {
  const trunks = [{ id: 't', points: [{ heightMm: 0, diameterMm: 40 }, { heightMm: 300, diameterMm: 20 }] }];

  test.each<readonly [string, ToldStructure, object, readonly string[]]>([
    ['a branch above the told height', { trunks, branches: [{ id: 'a', heightMm: 420 }] }, { heightMm: 400 }, ['impossible tree.structure.branches[0].heightMm']],
    ['a branch far above the last point of the trunk', { trunks, branches: [{ id: 'a', heightMm: 700 }] }, {}, ['impossible tree.structure.branches[0].heightMm']],
    ['a branch a little above the last point is none', { trunks, branches: [{ id: 'a', heightMm: 350 }] }, {}, []],
    ['a branch thicker than the trunk below it', { trunks, branches: [{ id: 'a', heightMm: 100, diameterMm: 50 }] }, {}, ['impossible tree.structure.branches[0].diameterMm']],
    ['a branch thicker than the trunk above it may be', { trunks, branches: [{ id: 'a', heightMm: 280, diameterMm: 30 }] }, {}, []],
    ['two branches of one id', { branches: [{ id: 'a', heightMm: 1 }, { id: 'a', heightMm: 2 }] }, {}, ['duplicate tree.structure.branches[1].id']],
    ['a branch of a trunk’s id', { trunks, branches: [{ id: 't', heightMm: 1 }] }, {}, ['duplicate tree.structure.branches[0].id']],
    ['branches that grow from each other', { branches: [{ id: 'a', from: 'b', heightMm: 1 }, { id: 'b', from: 'a', heightMm: 2 }] }, {}, ['circle tree.structure.branches[0].from', 'circle tree.structure.branches[1].from']],
    ['a branch from nothing', { branches: [{ id: 'a', from: 'trunck', heightMm: 1 }] }, {}, ['unknown-name tree.structure.branches[0].from']],
    ['a side branch thicker than its bearer', { branches: [{ id: 'a', heightMm: 1, diameterMm: 5 }, { id: 'b', from: 'a', heightMm: 2, diameterMm: 9 }] }, {}, ['impossible tree.structure.branches[1].diameterMm']],
    ['shares of foliage above the whole', { branches: [{ id: 'a', heightMm: 1, foliageShare: 0.8 }, { id: 'b', heightMm: 2, foliageShare: 0.7 }] }, {}, ['impossible tree.structure.branches']],
    ['a bud beyond the tip', { branches: [{ id: 'a', heightMm: 1, lengthMm: 50, budsAtMm: [20, 80] }] }, {}, ['impossible tree.structure.branches[0].budsAtMm']],
    ['a wound wider than the trunk is round', { trunks, wounds: [{ heightMm: 10, widthMm: 200 }] }, {}, ['impossible tree.structure.wounds[0].widthMm']],
    ['two points at one height', { trunks: [{ id: 't', points: [{ heightMm: 10, diameterMm: 40 }, { heightMm: 10, diameterMm: 30 }] }] }, {}, ['duplicate tree.structure.trunks[0].points[1].heightMm']],
    ['a second trunk thicker than the one it leaves', { trunks: [...trunks, { id: 'u', from: 't', atMm: 50, points: [{ heightMm: 60, diameterMm: 60 }] }] }, {}, ['impossible tree.structure.trunks[1].points[0].diameterMm']],
  ])('%s', (_, told, trunk, expected) => {
    expect(issues(told, trunk)).toEqual(expected);
  });

  test('a near miss is offered', () => {
    expect(() => readStructure({ trunks, branches: [{ id: 'low-left', heightMm: 10 }, { id: 'b', from: 'low-lft', heightMm: 20 }] })).toThrow(/did you mean `low-left`/);
  });
});

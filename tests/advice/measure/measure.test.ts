import { describe, expect, test } from 'vitest';
import { type Measures, measuresOf } from '../../../src/advice/measure/measure.js';
import { SparebudError } from '../../../src/knowledge/error.js';
import { shipped } from '../../shipped.js';

const measures = (tree: object): Measures => measuresOf({ tree: { species: 'pinus-thunbergii', ...tree } }, shipped);
const shows = ({ entries }: Measures, measure: string): readonly unknown[] => entries.filter((entry) => entry.measure === measure).map(({ of, value }) => [of.join(' '), value]);
const wishes = (tree: object): readonly string[] => measures(tree).wishes.map(({ id }) => id.slice('measure.wish.'.length));

const points = [[0, 40], [150, 36], [180, 41], [300, 24], [400, 10]].map(([heightMm, diameterMm]) => ({ heightMm, diameterMm }));
const trunks = [{ id: 'trunk', points }];
const branches = [
  { id: 'left', heightMm: 100, azimuthDeg: 90, diameterMm: 14 }, { id: 'right', heightMm: 104, azimuthDeg: 270, diameterMm: 12 },
  { id: 'front', heightMm: 180, azimuthDeg: 5, diameterMm: 9 }, { id: 'back', heightMm: 182, azimuthDeg: 185, diameterMm: 9, dead: true }, { id: 'up', heightMm: 300, azimuthDeg: 200, diameterMm: 25, branchToTrunk: 1 },
];

describe('what a told structure shows', () => {
  const all = measures({ trunk: { heightMm: 420 }, structure: { trunks, branches, wounds: [{ heightMm: 60, azimuthDeg: 0, widthMm: 12 }] } });

  test('levels, bars, faults and the bulge of a knot', () => {
    expect(shows(all, 'level')).toEqual([['left right', ['left', 'right']]]);
    expect(shows(all, 'bar')).toEqual([['left right', true]]);
    expect(shows(all, 'bulge')).toEqual([['trunk', 1.22]]);
    expect(shows(all, 'faults')).toEqual([['front', ['toward-front']]]);
    expect(shows(all, 'first')).toEqual([['left', 0.238]]);
  });

  test('an estimate has its range, and a dead branch carries nothing', () => {
    const carries = all.entries.filter(({ measure }) => measure === 'carries-about');
    expect(carries.map(({ of }) => of[0])).toEqual(['left', 'right', 'front', 'up']);
    for (const { value, atLeast, atMost, certainty } of carries) {
      expect(certainty).toBe('estimated');
      expect(atLeast).toBeLessThan(value as number);
      expect(atMost).toBeGreaterThan(value as number);
    }
  });

  test('each text is whole: nothing in it is left open', () => {
    for (const { text } of all.entries) expect(text.text, text.id).not.toMatch(/…|undefined|measure\./);
  });
});

test('what a sacrifice branch wins is told where last season’s thickening was measured', () => {
  const structure = { trunks: [{ id: 'trunk', points: [{ heightMm: 0, diameterMm: 30 }, { heightMm: 200, diameterMm: 30 }] }], branches: [{ id: 'low', heightMm: 60, diameterMm: 8, foliageShare: 0.4, role: 'sacrifice' }] };
  expect(shows(measures({ trunk: { thickenedMm: 2.6, heightMm: 300 }, structure }), 'sacrifice')).toEqual([['low', [2.5, 5.4]]]);
  expect(shows(measures({ trunk: { heightMm: 300 }, structure }), 'sacrifice')).toEqual([]);
});

test('marked whorls tell years, as a range', () => {
  const whorl = (heightMm: number, members: number): object[] => Array.from({ length: members }, (_, i) => ({ id: `w${heightMm}-${i}`, heightMm, azimuthDeg: (360 / members) * i, diameterMm: 4 }));
  const structure = { trunks: [{ id: 'trunk', points: [{ heightMm: 0, diameterMm: 30 }, { heightMm: 350, diameterMm: 10 }] }], branches: [40, 95, 150, 178, 235, 300].flatMap((heightMm, i) => whorl(heightMm, [5, 5, 4, 2, 5, 5][i]!)) };
  expect(shows(measures({ trunk: { heightMm: 360 }, structure }), 'years')).toEqual([['tree', [8, 10]]]);
});

describe('what would tell more', () => {
  test('of a bare beginning: branches, the trunk, the height', () => expect(wishes({ structure: {} })).toEqual(['branches', 'points', 'height', 'aim']));
  test('each is asked once for all branches that lack it, and no more once it is told', () => {
    const some = { trunk: { heightMm: 420 }, aim: { heightMm: 500, trunkDiameterMm: 60 }, structure: { trunks, branches: [{ id: 'a', heightMm: 100 }, { id: 'b', heightMm: 150, diameterMm: 6 }] } };
    expect(wishes(some)).toEqual(['thickness', 'side', 'curve']);
    expect(measures(some).wishes[1]!.text).toMatch(/a, b/);
  });
  test('measures that cannot be together are to be taken again', () => {
    expect(wishes({ trunk: { heightMm: 420 }, structure: { trunks, branches: [28, 26, 25, 24].map((diameterMm, i) => ({ id: `b${i}`, heightMm: 100 + 20 * i, azimuthDeg: 90 * i, diameterMm })) } })[0]).toBe('again');
  });
});

test('a tree of which nothing is told to measure is an error', () => {
  expect(() => measures({})).toThrow(SparebudError);
  expect(() => measuresOf(null, shipped)).toThrow(SparebudError);
});

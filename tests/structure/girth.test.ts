import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { severity } from '../../src/structure/severity.js';
import { type GirthWound, woundedGirthAt } from '../../src/structure/woundedGirth.js';

const wound = (widthMm: number, azimuthDeg: number, heightMm = 100): GirthWound => ({ heightMm, azimuthDeg, widthMm });
const share = (trunkMm: number, ...wounds: readonly GirthWound[]): number => woundedGirthAt(100, trunkMm, wounds).value;

describe('share of the girth wounded at one level', () => {
  test('three wounds side by side add up', () => expect(share(40, wound(14, 20), wound(12, 75), wound(12, 200))).toBeCloseTo(0.308, 3));
  test('where two overlap, what they share counts once', () => expect(share(40, wound(14, 20), wound(14, 50), wound(12, 200))).toBeCloseTo(0.294, 3));
  test('a whole whorl of four takes more than half', () => expect(share(40, wound(18, 0), wound(16, 90), wound(18, 180), wound(14, 270))).toBeCloseTo(0.542, 3));
  test('two opposite ones more than a quarter', () => expect(share(40, wound(18, 0), wound(18, 180))).toBeCloseTo(0.297, 3));
  test('three of five of a pine whorl are too many for one year, two are not', () => {
    expect(share(30, wound(10, 0), wound(9, 144), wound(8, 216))).toBeCloseTo(0.291, 3);
    expect(share(30, wound(10, 0), wound(8, 216))).toBeCloseTo(0.194, 3);
  });
  test('a wound as wide as the trunk takes half the girth', () => expect(share(20, wound(20, 0))).toBe(0.5));
  test('a wound further than a trunk’s thickness up or down is another level', () => {
    expect(share(40, wound(10, 0), wound(10, 180, 141))).toBeCloseTo(share(40, wound(10, 0)), 9);
    expect(share(40, wound(10, 0), wound(10, 180, 140))).toBeCloseTo(2 * share(40, wound(10, 0)), 9);
  });
  test('a wound on an unknown side counts in full at most, and not beside others at least', () => {
    const measure = woundedGirthAt(100, 40, [wound(14, 20), { heightMm: 100, widthMm: 12 }]);
    expect(measure.atLeast).toBeCloseTo(share(40, wound(14, 20)), 9);
    expect(measure.atMost).toBeCloseTo(share(40, wound(14, 20)) + share(40, wound(12, 0)), 9);
  });

  const anyWound = fc.record({ heightMm: fc.integer({ min: 0, max: 200 }), azimuthDeg: fc.option(fc.integer({ min: 0, max: 359 }), { nil: undefined }), widthMm: fc.integer({ min: 1, max: 40 }) }).map(({ azimuthDeg, ...rest }): GirthWound => (azimuthDeg === undefined ? rest : { ...rest, azimuthDeg }));

  test('another wound never makes less of it, and order does not matter', () => {
    fc.assert(fc.property(fc.array(anyWound, { maxLength: 6 }), anyWound, (wounds, more) => {
      const [before, after, otherwise] = [woundedGirthAt(100, 40, wounds), woundedGirthAt(100, 40, [...wounds, more]), woundedGirthAt(100, 40, [more, ...[...wounds].reverse()])];
      expect(after.atLeast).toBeGreaterThanOrEqual(before.atLeast - 1e-9);
      expect(after.atMost).toBeGreaterThanOrEqual(before.atMost - 1e-9);
      expect(otherwise.atMost).toBeCloseTo(after.atMost, 9);
      expect(otherwise.atLeast).toBeCloseTo(after.atLeast, 9);
    }));
  });

  test('turning or mirroring the wounds changes nothing', () => {
    fc.assert(fc.property(fc.array(anyWound, { maxLength: 6 }), fc.integer({ min: -1000, max: 1000 }), (wounds, by) => {
      const as = (side: (azimuthDeg: number) => number): number => woundedGirthAt(100, 40, wounds.map((each) => (each.azimuthDeg === undefined ? each : { ...each, azimuthDeg: side(each.azimuthDeg) }))).value;
      expect(as((azimuth) => azimuth + by)).toBeCloseTo(as((azimuth) => azimuth), 6);
      expect(as((azimuth) => -azimuth)).toBeCloseTo(as((azimuth) => azimuth), 6);
    }));
  });
});

describe('cut surfaces over the section of the trunk', () => {
  test.each([
    ['nine cuts of ten on a trunk of 60', Array.from({ length: 9 }, () => 10), 60, 0.25],
    ['thirteen of them are severe', Array.from({ length: 13 }, () => 10), 60, 0.361],
    ['20 and 12 on 45', [20, 12], 45, 0.269],
    ['14, 9 and 8 on 45', [14, 9, 8], 45, 0.168],
    ['10, 9 and 8 of a pine whorl on 30', [10, 9, 8], 30, 0.272],
  ] as const)('%s', (_, cuts, trunkMm, expected) => {
    expect(severity(cuts, trunkMm)).toBeCloseTo(expected, 3);
  });
});

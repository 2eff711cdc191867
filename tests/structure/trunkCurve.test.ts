import { expect, test } from 'vitest';
import { readStructure } from '../../src/structure/readStructure.js';
import { insideCurve, trunkCurve } from '../../src/structure/trunkCurve.js';

const line = [[0, 0, 0], [0, 0, 60], [18, 4, 130], [40, 6, 190], [30, 4, 260], [10, 0, 330]] as const;
const trunk = readStructure({ trunks: [{ id: 't', points: line.map(([sideMm, backMm, heightMm]) => ({ heightMm, diameterMm: 30, sideMm, backMm })) }] }).trunks[0]!;

test('a trunk that leans to the right and back is hollow on the left', () => {
  const curve = trunkCurve(trunk, 190)!;
  expect(curve.sagitta).toBeCloseTo(0.127, 3);
  expect(curve.hollowDeg).toBeCloseTo(83, 0);
});

test('a branch on the left grows inside that curve, one on the right outside', () => {
  expect(insideCurve(trunk, 190, 90)).toBe(true);
  expect(insideCurve(trunk, 190, 270)).toBe(false);
});

test('where the curve is slight there is no inside', () => {
  expect(trunkCurve(trunk, 130)!.sagitta).toBeCloseTo(0.027, 3);
  expect(insideCurve(trunk, 130, 90)).toBeUndefined();
});

test('a trunk told by heights and diameters alone has no known curve', () => {
  const bare = readStructure({ trunks: [{ id: 't', points: line.map(([, , heightMm]) => ({ heightMm, diameterMm: 30 })) }] }).trunks[0]!;
  expect(insideCurve(bare, 190, 90)).toBeUndefined();
});

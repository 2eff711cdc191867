import { expect, test } from 'vitest';
import { balance, largestEmptySector } from '../../src/structure/sides.js';

const branches = [[100, 9], [260, 7], [175, 6], [60, 5], [300, 5]].map(([azimuthDeg, diameterMm]) => ({ azimuthDeg: azimuthDeg!, diameterMm: diameterMm! }));

test('five branches well spread are nearly even, the back left a little heavier', () => {
  const { oneSided, towardDeg } = balance(branches);
  expect(oneSided).toBeCloseTo(0.22, 2);
  expect(towardDeg).toBeCloseTo(134, 0);
});

test('their widest gap is no hole', () => {
  expect(largestEmptySector(branches.map(({ azimuthDeg }) => azimuthDeg))).toEqual({ widthDeg: 120, middleDeg: 0 });
});

test('one branch leaves all the rest empty, and none has no sector', () => {
  expect(largestEmptySector([90])).toEqual({ widthDeg: 360, middleDeg: 270 });
  expect(largestEmptySector([])).toBeUndefined();
});

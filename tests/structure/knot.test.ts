import { describe, expect, test } from 'vitest';
import { knotOf, mostAtLevel } from '../../src/structure/knot.js';
import { falseWhorls, whorlYears } from '../../src/structure/whorlYears.js';

test('a whorl of five on a trunk of 30 has collars over half the girth', () => {
  const knot = knotOf([10, 9, 9, 8, 7], 30);
  expect(knot.sectionShare).toBeCloseTo(0.417, 3);
  expect(knot.collarShare).toBeCloseTo(0.547, 3);
});

test.each([[0.25, 5], [0.33, 3], [0.4, 3], [0.5, 2], [0.67, 1], [0.83, 1]])('of branches %f as thick as the trunk a level bears %i', (ratio, most) => {
  expect(mostAtLevel(ratio)).toBe(most);
});

test.each([[[0.5], 1.118], [[0.4, 0.4], 1.149], [[0.4, 0.4, 0.4], 1.217], [[0.4, 0.4, 0.4, 0.4], 1.281], [[0.5, 0.5, 0.5, 0.5, 0.5], 1.5]])('branches of %j leave a step of %f', (diameters, step) => {
  expect(knotOf(diameters, 1).step).toBeCloseTo(step, 3);
});

describe('whorls that tell years', () => {
  const whorls = [40, 95, 150, 178, 235, 300].map((heightMm, i) => ({ heightMm, members: [5, 5, 4, 2, 5, 5][i]! }));

  test('one that is close above another and thin is of the same year', () => expect(falseWhorls(whorls).map(({ heightMm }) => heightMm)).toEqual([178]));
  test('the others, the years below the first and the current shoot make a range', () => expect(whorlYears(whorls)).toEqual([8, 10]));
  test('a close whorl that is as full as the others counts', () => expect(falseWhorls(whorls.map((whorl) => ({ ...whorl, members: 5 })))).toEqual([]));
});

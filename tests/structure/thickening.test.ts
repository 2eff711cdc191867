import { describe, expect, test } from 'vitest';
import { bendRadiusMm, bendStrain } from '../../src/structure/bend.js';
import { customaryHeights } from '../../src/structure/spacing.js';
import { weeksToMark } from '../../src/structure/weeksToMark.js';
import { sacrificeWorth, sectionGained, thickAfter, yearsToHalf } from '../../src/structure/thickening.js';

describe('a trunk that gains 150 square millimetres a year', () => {
  test('has thinner rings from year to year', () => {
    const rings = [1, 2, 3, 4, 5].map((year) => (thickAfter(30, 150, year) - thickAfter(30, 150, year - 1)) / 2);
    expect(rings.map((ring) => Math.round(ring * 100) / 100)).toEqual([1.52, 1.39, 1.29, 1.21, 1.14]);
  });

  test('with a branch of 40 % of the foliage is worth three millimetres below it in three years', () => {
    expect([1, 2, 3].map((years) => sacrificeWorth(30, 150, 0.4, years)).map(({ belowMm, aboveMm }) => [belowMm, aboveMm].map((mm) => Math.round(mm * 10) / 10))).toEqual([[33, 31.9], [35.8, 33.6], [38.4, 35.3]]);
    const { gainMm, step } = sacrificeWorth(30, 150, 0.4, 3);
    expect(gainMm).toBeCloseTo(3.1, 1);
    expect(step).toBeCloseTo(1.09, 2);
  });

  test('gained that section by thickening from 30 to 33', () => expect(sectionGained(thickAfter(30, 150, 1), thickAfter(30, 150, 1) - 30)).toBeCloseTo(150, 6));
});

test('wire marks the sooner, the wider the rings and the shorter the season they are laid down in', () => {
  const tenth = (value: number): number => Math.round(value * 10) / 10;
  for (const [ringMm, growingWeeks, mean, atPeak] of [[0.5, 20, 20, 11.8], [1, 18, 9, 5.3], [1.5, 15, 5, 2.9], [3, 12, 2, 1.2]] as const) {
    const weeks = weeksToMark(ringMm, growingWeeks, 0.5, 1.7);
    expect([tenth(weeks.mean), tenth(weeks.atPeak)]).toEqual([mean, atPeak]);
  }
  expect(weeksToMark(1, 18, 0.5, 1.7, 0.5).mean).toBeCloseTo(18, 6);
});

test('a branch of 8 on a trunk of 30 is half as thick after five and a half years', () => {
  expect(yearsToHalf(8, 30, 2.6, 2.6)).toBeCloseTo(5.4, 1);
  expect(yearsToHalf(16, 30, 2.6, 2.6)).toBe(0);
  expect(yearsToHalf(8, 30, 1, 2.6)).toBeUndefined();
});

test('seven branches on a tree of 600 stand closer towards the top', () => {
  expect(customaryHeights(600, 200, 60, 7).map(Math.round)).toEqual([200, 292, 366, 425, 472, 510, 540]);
});

describe('bends', () => {
  test.each([[6, 60, 80, 76.4, 0.039], [6, 60, 200, 191, 0.016], [12, 45, 60, 76.4, 0.079]])('a branch of %i bent by %i degrees over %i mm', (branchMm, angleDeg, lengthMm, radiusMm, strain) => {
    expect(bendRadiusMm(angleDeg, lengthMm)).toBeCloseTo(radiusMm, 0);
    expect(bendStrain(branchMm, bendRadiusMm(angleDeg, lengthMm))).toBeCloseTo(strain, 3);
  });
});

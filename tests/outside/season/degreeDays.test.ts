import { describe, expect, it } from 'vitest';
import { averageDegreeDays, degreeDaysOfYear, modifiedAverageDegreeDays, sineDegreeDays, triangleDegreeDays } from '../../../src/season/degreeDays.js';
import { smoothYear } from '../../../src/season/smoothYear.js';
import { mean, meanAbsolute, shareWithin } from './averages.js';
import { usStations } from './usStations.js';

describe('degree-days of one day', () => {
  it('agree with the worked values of the TrenchR reference pages (7 to 14 C, base 12 C: sine 0.47, triangle 0.29)', () => {
    expect(sineDegreeDays(7, 14, 12)).toBeCloseTo(0.47, 2);
    expect(triangleDegreeDays(7, 14, 12)).toBeCloseTo(0.29, 2);
  });

  it('agree with the worked values of Herms, Ohio State University (40 to 70 F, base 50 F: average 5, modified average 10)', () => {
    expect(averageDegreeDays(40, 70, 50)).toBe(5);
    expect(modifiedAverageDegreeDays(40, 70, 50)).toBe(10);
  });

  it('agree with the example of UC IPM (mean 64 F, base 53 F: 11)', () => {
    expect(averageDegreeDays(54, 74, 53)).toBe(11);
  });

  it.each([
    [7, 14, 12, 0, 1, 0.468, 0.286], [40, 70, 50, 5, 10, 7.542, 6.667], [45, 75, 50, 10, 12.5, 10.882, 10.417], [0, 12, 5, 1, 3.5, 2.436, 2.042], [-2, 9, 5, 0, 2, 1.066, 0.727],
  ])('from %d to %d over %d are the same by hand (own arithmetic)', (low, high, base, average, modified, sine, triangle) => {
    expect(averageDegreeDays(low, high, base)).toBeCloseTo(average, 9);
    expect(modifiedAverageDegreeDays(low, high, base)).toBeCloseTo(modified, 9);
    expect(sineDegreeDays(low, high, base)).toBeCloseTo(sine, 3);
    expect(triangleDegreeDays(low, high, base)).toBeCloseTo(triangle, 3);
  });

  it('are the plain excess where the whole day lies above the base, and nothing where it lies below', () => {
    for (const method of [averageDegreeDays, modifiedAverageDegreeDays, sineDegreeDays, triangleDegreeDays]) {
      expect(method(12, 20, 10)).toBeCloseTo(6, 9);
      expect(method(-8, 3, 5)).toBe(0);
      expect(method(10, 10, 5)).toBe(5);
    }
  });
});

// Against: annual degree-days of NOAA NCEI, U.S. Climate Normals 1981-2010 (tests/outside/data/README.md).
describe('annual degree-days from monthly normals', () => {
  const percent = (base: number, total: (station: (typeof usStations)[number]) => number): readonly number[] => usStations
    .filter((station) => total(station) > 500)
    .map((station) => {
      const year = smoothYear(station.minC.map((low, month) => (low + (station.maxC[month] ?? 0)) / 2));
      const sum = degreeDaysOfYear(year, base).reduce((all, day) => all + day, 0);
      return (100 * (sum - total(station))) / total(station);
    });

  it('miss the published totals by 2.7 % above 10 C at most', () => {
    const errors = percent(10, (station) => station.degreeDays10);
    expect(errors.length).toBeGreaterThan(5600);
    expect(meanAbsolute(errors)).toBeLessThanOrEqual(2.7);
    expect(Math.abs(mean(errors))).toBeLessThan(1);
    expect(shareWithin(errors, 6)).toBeGreaterThan(0.95);
  });

  it('miss them by 1.6 % above 4.44 C at most', () => {
    const errors = percent(4.44, (station) => station.degreeDays4);
    expect(errors.length).toBeGreaterThan(5750);
    expect(meanAbsolute(errors)).toBeLessThanOrEqual(1.6);
    expect(shareWithin(errors, 4)).toBeGreaterThan(0.95);
  });
});

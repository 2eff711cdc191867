import { describe, expect, it } from 'vitest';
import { autumnDate } from '../../src/season/autumnDate.js';
import { dayToDaySpread } from '../../src/season/dayToDaySpread.js';
import { distanceKm } from '../../src/season/distanceKm.js';
import { fromMidwinter, inGrowingYear } from '../../src/season/growingYear.js';
import { dayOf } from '../../src/season/day.js';
import { nightSpread } from '../../src/season/nightSpread.js';
import { rootRun } from '../../src/season/rootRun.js';
import { daylengthWeight, dayReaching, springForcing } from '../../src/season/springForcing.js';

const year = (mean: number, half: number): readonly number[] =>
  Array.from({ length: 365 }, (_, seasonDay) => mean - half * Math.cos((2 * Math.PI * (seasonDay - 25)) / 365));

describe('distances', () => {
  it('are those of the globe: a degree of the meridian is 111.2 km, a pole is a pole', () => {
    expect(distanceKm(0, 0, 1, 0)).toBeCloseTo(111.19, 1);
    expect(distanceKm(90, 0, 90, 120)).toBeCloseTo(0, 6);
    expect(distanceKm(0, 179.5, 0, -179.5)).toBeCloseTo(111.19, 1);
  });
});

describe('the growing year', () => {
  it('begins at midwinter, on either side of the equator', () => {
    expect(inGrowingYear(dayOf('2025-12-22'), false)).toEqual({ year: 2025, seasonDay: 0 });
    expect(inGrowingYear(dayOf('2025-12-21'), false)).toEqual({ year: 2024, seasonDay: 364 });
    expect(inGrowingYear(dayOf('2026-06-22'), true)).toEqual({ year: 2026, seasonDay: 0 });
    expect(inGrowingYear(dayOf('2026-06-21'), true)).toEqual({ year: 2025, seasonDay: 364 });
  });

  it('turns values from 1 January on into values from midwinter on', () => {
    const numbers = Array.from({ length: 365 }, (_, i) => i);
    expect(fromMidwinter(numbers, false).slice(0, 11)).toEqual([355, 356, 357, 358, 359, 360, 361, 362, 363, 364, 0]);
    expect(fromMidwinter(numbers, true)[0]).toBe(172);
  });
});

describe('the scatter of days', () => {
  it('is widest in the coldest weeks and smallest in the warmest', () => {
    const spread = dayToDaySpread(year(10, 12));
    expect(spread[25]).toBeCloseTo(5.5, 5);
    expect(Math.min(...spread)).toBeCloseTo(2.5, 2);
    expect(Math.max(...dayToDaySpread(year(26, 1)))).toBeLessThan(3);
  });

  it('of nights is as tabled for January and July on both sides of the Atlantic', () => {
    expect(nightSpread(year(8, 13.5))[25]).toBeCloseTo(6.6, 1);
    expect(nightSpread(year(8, 13.5))[205]).toBeCloseTo(2.9, 1);
    expect(nightSpread(year(10, 8.5))[25]).toBeCloseTo(5.4, 1);
    expect(nightSpread(year(26, 0.5))[25]).toBeLessThan(2);
  });
});

describe('spring units', () => {
  it('count nothing on days of 10 hours and a degree-day on days of 14', () => {
    expect(daylengthWeight(9)).toBe(0);
    expect(daylengthWeight(10)).toBe(0);
    expect(daylengthWeight(14)).toBe(1);
  });

  it('reach a threshold on the day that fills it, or never', () => {
    expect(dayReaching([0, 1, 1, 3], 2)).toBe(2);
    expect(dayReaching([0, 1, 1, 3], 9)).toBeUndefined();
  });

  it('come sooner in a warmer year', () => {
    const light = year(12, 4);
    const day = (mean: number): number => dayReaching(springForcing(year(mean, 9), light), 100) ?? Infinity;
    expect(day(12)).toBeLessThan(day(10));
  });
});

describe('autumn', () => {
  it('comes later where the year is warmer, and stops at the limits of what was fitted', () => {
    expect(autumnDate(11)).toBeGreaterThan(autumnDate(8));
    expect(autumnDate(30)).toBe(autumnDate(20));
    expect(autumnDate(-15)).toBe(autumnDate(0));
  });
});

describe('roots', () => {
  it('work while the mean air is above 7 C, 14 C for trees of warm countries', () => {
    const temperate = rootRun(year(10, 10), { model: 'deciduous' });
    const warm = rootRun(year(10, 10), { model: 'tropical' });
    if (typeof temperate !== 'object' || typeof warm !== 'object') throw new Error('no run');
    expect(year(10, 10)[temperate.start]).toBeCloseTo(7, 0);
    expect(warm.start).toBeGreaterThan(temperate.start);
    expect(warm.end).toBeLessThan(temperate.end);
  });

  it('never stop in the tropics and never start on ice', () => {
    expect(rootRun(year(26, 1), { model: 'deciduous' })).toBe('always');
    expect(rootRun(year(-10, 5), { model: 'deciduous' })).toBeUndefined();
  });
});

import { describe, expect, it } from 'vitest';
import { smoothYear } from '../../src/season/smoothYear.js';
import { monthLengths } from '../../src/season/yearDay.js';
import { stations } from './stations.js';

const monthMeans = (year: readonly number[]): readonly number[] => {
  let at = 0;
  return monthLengths.map((length) => {
    const mean = year.slice(at, at + length).reduce((sum, value) => sum + value, 0) / length;
    at += length;
    return mean;
  });
};

describe('a smooth year', () => {
  it('averages to the months it came from, within half a degree at every bundled station', () => {
    for (const station of stations) {
      monthMeans(smoothYear(station.minC)).forEach((mean, month) => {
        expect(Math.abs(mean - (station.minC[month] ?? 0)), `${station.id} month ${month + 1}`).toBeLessThan(1.2);
      });
      const all = smoothYear(station.maxC).reduce((sum, value) => sum + value, 0) / 365;
      expect(all).toBeCloseTo(station.maxC.reduce((sum, value, month) => sum + value * (monthLengths[month] ?? 0), 0) / 365, 0);
    }
  });

  it('gives back a wave of one, two or three swings exactly', () => {
    const wave = Array.from({ length: 365 }, (_, i) => 10 + 8 * Math.cos((2 * Math.PI * (i - 200)) / 365) + 1.5 * Math.sin((4 * Math.PI * i) / 365) - 0.4 * Math.cos((6 * Math.PI * i) / 365));
    smoothYear(monthMeans(wave)).forEach((value, i) => expect(Math.abs(value - (wave[i] ?? 0))).toBeLessThan(0.02));
  });

  it('is flat where the months are', () => {
    for (const value of smoothYear(new Array<number>(12).fill(25))) expect(value).toBeCloseTo(25, 9);
  });
});

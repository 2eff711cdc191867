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
  it('averages to the months it came from: within a fifth of a degree on average, 1.3 at worst, at every bundled station', () => {
    const off = stations.flatMap((station) => [station.minC, station.maxC].flatMap((means) =>
      monthMeans(smoothYear(means)).map((mean, month) => Math.abs(mean - (means[month] ?? Number.NaN)))));
    expect(off).toHaveLength(stations.length * 24);
    expect(off.reduce((sum, one) => sum + one, 0) / off.length).toBeLessThan(0.2);
    expect(Math.max(...off)).toBeLessThan(1.3);
  });

  it('gives back a wave of one, two or three swings exactly', () => {
    const wave = Array.from({ length: 365 }, (_, i) => 10 + 8 * Math.cos((2 * Math.PI * (i - 200)) / 365) + 1.5 * Math.sin((4 * Math.PI * i) / 365) - 0.4 * Math.cos((6 * Math.PI * i) / 365));
    smoothYear(monthMeans(wave)).forEach((value, i) => expect(Math.abs(value - (wave[i] ?? 0))).toBeLessThan(0.02));
  });

  it('is flat where the months are', () => {
    for (const value of smoothYear(new Array<number>(12).fill(25))) expect(value).toBeCloseTo(25, 9);
  });
});

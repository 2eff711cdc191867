import { describe, expect, it } from 'vitest';
import { chillAfterHour, chillingHour, growingDegreeHour, noChill, utahUnit } from '../../../src/season/chill.js';

const portionsOf = (hours: readonly number[]): number => hours.reduce(chillAfterHour, noChill).portions;
const sum = (hours: readonly number[], unit: (temperatureC: number) => number): number => hours.reduce((all, hour) => all + unit(hour), 0);
const days = (count: number, day: readonly number[]): readonly number[] => Array.from({ length: count }, () => day).flat();
const hoursAt = (count: number, temperatureC: number): readonly number[] => new Array<number>(count).fill(temperatureC);

// Against: numbers worked out by an independent implementation of the definitions in chillR 0.77 (Fishman et al. 1987; Richardson et al. 1974), one that matches
// the published output of the chillR lessons for the Winters orchard, California.
describe('the Dynamic Model', () => {
  it.each([
    [-2, 0.242, 36], [0, 4.852, 34], [2, 26.332, 31], [4, 29.849, 30], [6, 34.204, 29], [7, 34.851, 29], [8, 34.568, 29], [10, 32.436, 31], [12, 25.002, 39],
  ])('banks portions in 1000 hours at a steady %d C: %d, the first at hour %d', (temperature, portions, firstHour) => {
    let state = noChill;
    let first = -1;
    for (let hour = 0; hour < 1000; hour += 1) {
      state = chillAfterHour(state, temperature);
      if (first < 0 && state.portions > 0) first = hour;
    }
    expect(Math.abs(state.portions - portions)).toBeLessThan(5.1e-4);
    expect(first).toBe(firstHour);
  });

  it('banks nothing at a steady 13 C and above', () => {
    for (const temperature of [13, 15, 20, 30]) expect(portionsOf(hoursAt(1000, temperature))).toBe(0);
  });

  it.each([[10, 49.063], [13, 45.658], [15, 42.788], [18, 29.468], [20, 29.304], [22, 0], [24, 0]])(
    'sums 60 days of 16 h at 6 C and 8 h at %d C to %d portions', (warm, portions) => {
      expect(portionsOf(days(60, [...hoursAt(16, 6), ...hoursAt(8, warm)]))).toBeCloseTo(portions, 3);
    });

  it('must run from the first record: a slice alone banks its first portion late', () => {
    const cold = hoursAt(240, 6);
    const before = cold.slice(0, 215).reduce(chillAfterHour, noChill);
    const whole = cold.reduce(chillAfterHour, noChill).portions - before.portions;
    expect(portionsOf(cold.slice(215))).toBe(0);
    expect(whole).toBeGreaterThan(0);
  });
});

const day = [4, 3.5, 3, 2.5, 2, 1.5, 1, 2, 5, 8, 11, 13, 14, 14.5, 14, 13, 11, 9.5, 8.5, 7.5, 6.5, 6, 5.5, 5];

describe('one worked day of 24 hours', () => {
  it('holds 13 chilling hours, 15 Utah units and 67.328 degree hours', () => {
    expect(sum(day, chillingHour)).toBe(13);
    expect(sum(day, utahUnit)).toBe(15);
    expect(sum(day, growingDegreeHour)).toBeCloseTo(67.328, 2);
  });

  it('thirty times over holds 390, 450, 2019.841 and 24.3856 portions', () => {
    const month = days(30, day);
    expect(sum(month, chillingHour)).toBe(390);
    expect(sum(month, utahUnit)).toBe(450);
    expect(sum(month, growingDegreeHour)).toBeCloseTo(2019.841, 2);
    expect(Math.abs(portionsOf(month) - 24.3856)).toBeLessThan(1e-4);
  });

  it.each([[10, 1200], [13, 960], [15, 960], [18, 720], [20, 480], [22, 480], [24, 480]])('60 days with 8 h at %d C hold %d Utah units', (warm, units) => {
    expect(sum(days(60, [...hoursAt(16, 6), ...hoursAt(8, warm)]), utahUnit)).toBe(units);
  });
});

// Against: the step table of Richardson, Seeley & Walker 1974 as in chillR 0.77.
describe('Utah units', () => {
  it.each([[1.4, 0], [1.41, 0.5], [2.4, 0.5], [2.41, 1], [9.1, 1], [9.11, 0.5], [12.4, 0.5], [12.41, 0], [15.9, 0], [15.91, -0.5], [18, -0.5], [18.01, -1]])('at %d C are %d', (temperature, units) => {
    expect(utahUnit(temperature)).toBe(units);
  });
});

// Against: Anderson, Richardson & Kesner 1986, constants as in chillR 0.77.
describe('growing degree hours', () => {
  it.each([[5, 0.1173], [10, 3.9534], [15, 11.2847], [20, 18.197], [25, 21], [30, 7.2479], [36, 0]])('at %d C are %d', (temperature, hours) => {
    expect(growingDegreeHour(temperature)).toBeCloseTo(hours, 4);
  });
});

describe('chilling hours', () => {
  it('count from 0 to 7.2 C, both included', () => {
    expect([-0.01, 0, 7.2, 7.21].map(chillingHour)).toEqual([0, 1, 1, 0]);
  });
});

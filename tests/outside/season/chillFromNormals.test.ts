import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { chillByDay } from '../../../src/season/chillByDay.js';
import { climateOf } from '../../../src/season/climate.js';
import { seasonDayOf } from '../../../src/season/growingYear.js';
import { syntheticAnomalies } from '../../../src/season/syntheticAnomalies.js';
import { yearDayOf } from '../../../src/season/yearDay.js';
import type { Station } from '../../../src/season/station.js';
import { mean } from './averages.js';

const places = (JSON.parse(readFileSync(new URL('../../../shared/places.json', import.meta.url), 'utf8')) as { readonly stations: readonly Station[] }).stations;
const portionsAt = (place: string, month: number, dayOfMonth: number): number =>
  chillByDay(climateOf({ place }, places))[seasonDayOf(yearDayOf(month, dayOfMonth), false)] ?? Number.NaN;

describe('chill portions from normals', () => {
  // Against: Klein-Altendorf, Germany, 1 November to 28 February, mean of 12 winters from daily extremes (chillR data set KA_weather): 80.4, sd 5.0.
  // Cologne stands for it, 30 km away; smooth normals alone give 84.3 there.
  it('come within 5 portions of twelve winters near Bonn', () => {
    expect(Math.abs(portionsAt('koeln-cologne-germany', 2, 28) - portionsAt('koeln-cologne-germany', 10, 31) - 80.4)).toBeLessThan(5);
  });

  it('only ever grow through a winter, and there are none in the tropics', () => {
    const chill = chillByDay(climateOf({ place: 'koeln-cologne-germany' }, places));
    const winter = [...chill.slice(283), ...chill.slice(0, 100)];
    winter.forEach((portions, i) => { if (i > 0) expect(portions).toBeGreaterThanOrEqual(winter[i - 1] ?? 0); });
    expect(portionsAt('phuket-thailand', 3, 31)).toBe(0);
  });
});

describe('the made-up weather', () => {
  const winters = Array.from({ length: 40 }, (_, seed) => syntheticAnomalies(seed + 1, 180));

  it('has the spread and the memory that it should have', () => {
    const all = winters.flat();
    const deviation = Math.sqrt(mean(all.map((one) => one * one)));
    const carried = mean(winters.flatMap((winter) => winter.slice(1).map((one, i) => one * (winter[i] ?? 0)))) / deviation ** 2;
    expect(deviation).toBeGreaterThan(4.2);
    expect(deviation).toBeLessThan(4.8);
    expect(carried).toBeCloseTo(0.65, 1);
    expect(Math.abs(mean(all))).toBeLessThan(0.4);
  });

  it('is the same for the same seed, and another for another', () => {
    expect(syntheticAnomalies(3, 20)).toEqual(syntheticAnomalies(3, 20));
    expect(syntheticAnomalies(3, 20)).not.toEqual(syntheticAnomalies(4, 20));
  });
});

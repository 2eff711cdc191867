import { describe, expect, it } from 'vitest';
import { saneStation } from '../../src/season/saneStation.js';
import { lowland, stations } from './stations.js';

const plain = { id: 'x', name: 'Invented', country: 'XX', latitude: lowland.latitude, longitude: lowland.longitude,
  minC: [1, 1, 3, 5, 9, 12, 14, 13, 11, 8, 4, 2], maxC: [6, 7, 11, 15, 19, 21, 23, 23, 20, 15, 10, 7] };
const changed = (means: readonly number[], month: number, value: number): readonly number[] => means.map((one, i) => (i === month ? value : one));

describe('a bundled station', () => {
  it('passes where its normals make sense', () => {
    expect(saneStation(plain)).toEqual([]);
  });

  it('is refused where absolute extremes stand for means', () => {
    expect(saneStation({ ...plain, minC: changed(plain.minC, 0, -25), maxC: changed(plain.maxC, 0, 19) }).join(' ')).toMatch(/month 1.*apart/);
  });

  it('is refused for a slip of the pen in one month', () => {
    expect(saneStation({ ...plain, minC: changed(plain.minC, 10, 13.9), maxC: changed(plain.maxC, 10, 16) }).join(' ')).toMatch(/month 11.*neighbours/);
  });

  it('is refused for missing months, numbers that are none, and places off the globe', () => {
    expect(saneStation({ ...plain, minC: plain.minC.slice(1) })).not.toEqual([]);
    expect(saneStation({ ...plain, minC: changed(plain.minC, 3, Number.NaN) })).not.toEqual([]);
    expect(saneStation({ ...plain, latitude: 95 })).not.toEqual([]);
    expect(saneStation({ ...plain, longitude: -200 })).not.toEqual([]);
    expect(saneStation({ ...plain, maxC: changed(plain.maxC, 2, 2) })).not.toEqual([]);
  });

  it('is refused for a frost code in place of a date, and for half a pair of dates', () => {
    expect(saneStation({ ...plain, lastFrost: '-6666', firstFrost: '-6666' })).toHaveLength(2);
    expect(saneStation({ ...plain, lastFrost: '04-20' })).toHaveLength(1);
    expect(saneStation({ ...plain, lastFrost: '04-20', firstFrost: '10-28' })).toEqual([]);
  });

  it('passes for every one that ships, under an id of its own', () => {
    expect(stations.length).toBeGreaterThan(330);
    for (const station of stations) expect(saneStation(station), station.id).toEqual([]);
    expect(new Set(stations.map((station) => station.id)).size).toBe(stations.length);
  });
});

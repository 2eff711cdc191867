import { describe, expect, it } from 'vitest';
import { climateOf } from '../../src/season/climate.js';
import { climatesAt } from '../../src/season/climatesAt.js';
import { climateYear } from '../../src/season/climateYear.js';
import { isoOf } from '../../src/season/day.js';
import { dayOfSeason } from '../../src/season/growingYear.js';
import { lowland, stations } from './stations.js';

const low = [1, 1, 3, 5, 9, 12, 14, 13, 11, 8, 4, 2];
const high = [6, 7, 11, 15, 19, 21, 23, 23, 20, 15, 10, 7];

describe('the climate of a place', () => {
  it('takes own normals before anything else', () => {
    const climate = climateOf({ latitude: 35.7, longitude: 139.7, place: 'sapporo-japan', monthlyMinC: low, monthlyMaxC: high }, stations);
    expect(climate).toMatchObject({ quality: 'normals', latitude: 35.7, minC: low, maxC: high });
  });

  it('takes the named station next, even where the garden is elsewhere', () => {
    expect(climateOf({ latitude: 35.7, longitude: 139.7, place: 'sapporo-japan' }, stations).station?.id).toBe('sapporo-japan');
  });

  it('says so where the named station does not exist, and goes on', () => {
    const climate = climateOf({ latitude: 35.7, longitude: 139.7, place: 'atlantis' }, stations);
    expect(climate.notes).toContain('unknown-place');
    expect(climate.station?.id).toBe('tokyo-japan');
  });

  it('takes the nearest station, less sure the farther it is, and none beyond 300 km', () => {
    const near = climateOf({ latitude: 35.2, longitude: 139.3 }, stations);
    const far = climateOf({ latitude: 37.0, longitude: 141.0 }, stations);
    expect(near.station?.id).toBe('tokyo-japan');
    expect(far.quality).toBe('station');
    expect(far.plusMinusDays).toBeGreaterThan(near.plusMinusDays);
    expect(climateOf({ latitude: 51, longitude: -25 }, stations).quality).toBe('latitude');
  });

  it('takes stated frost dates rather than a station more than 120 km away', () => {
    expect(climateOf({ latitude: 51, longitude: 3.7, lastFrost: '04-20', firstFrost: '10-28' }, stations).quality).toBe('frost-dates');
    expect(climateOf({ latitude: 51, longitude: 3.7 }, stations).quality).toBe('station');
  });

  it('is surer near a station than far from it', () => {
    const near = climateOf({ latitude: 35.68, longitude: 139.77, elevationM: 25 }, stations);
    const far = climateOf({ latitude: 36.5, longitude: 139.3, elevationM: 25 }, stations);
    expect(near.plusMinusDays).toBe(10);
    expect(far.plusMinusDays).toBeGreaterThan(near.plusMinusDays);
  });

  it('is colder up the hill by 6.5 C per km, and refuses a station 600 m below', () => {
    const at = (elevationM: number) => climateOf({ latitude: 35.68, longitude: 139.77, elevationM }, stations);
    const valley = at(25);
    const hill = at(425);
    expect((valley.minC?.[0] ?? 0) - (hill.minC?.[0] ?? 0)).toBeCloseTo(2.6, 5);
    expect(hill.notes).toContain('station-height-corrected');
    expect(hill.lastFrost).toBeUndefined();
    expect(at(900).quality).toBe('latitude');
  });

  it('says that the height is unknown where station or garden lacks it, and widens the error', () => {
    const climate = climateOf({ latitude: 50.1, longitude: 8.68, elevationM: 112 }, stations);
    expect(climate.station?.name).toBe('Frankfurt');
    expect(climate.notes).toContain('station-height-unknown');
    expect(climate.plusMinusDays).toBeGreaterThan(10);
  });

  it('fits a curve to two frost dates where no station is near, and keeps the dates', () => {
    const climate = climateOf(lowland, stations);
    expect(climate).toMatchObject({ quality: 'frost-dates', lastFrost: '04-20', firstFrost: '10-28' });
    const year = climateYear(climate);
    if (year === undefined || typeof year.frost !== 'object') throw new Error('no frost');
    // The smoothed minimum is about 5.45 C on both.
    expect(year.minC[year.frost.last]).toBeCloseTo(5.45, 0);
    expect(year.minC[year.frost.first]).toBeCloseTo(5.45, 0);
    expect(isoOf(dayOfSeason(2025, year.frost.last, false))).toBe('2026-04-20');
  });

  it('takes from a station within 300 km how far the year swings: near the sea winters are milder than frost dates alone would say', () => {
    const told = { latitude: 51, longitude: 3.7, lastFrost: '04-20', firstFrost: '10-28' };
    const coldest = (bundled: typeof stations): number => Math.min(...climateOf(told, bundled).minC!);
    expect(coldest(stations)).toBeGreaterThan(coldest([]) + 1);
    expect(climateOf(told, stations).quality).toBe('frost-dates');
  });

  it('believes stated frosts over a station', () => {
    const climate = climateOf({ latitude: 45, longitude: -93.2, lastFrost: '05-20', firstFrost: '09-20' }, stations);
    expect(climate).toMatchObject({ quality: 'station', lastFrost: '05-20', firstFrost: '09-20' });
    expect(climate.notes).toContain('frost-dates-given');
  });

  it('fits frosts south of the equator the right way round', () => {
    const south = climateYear(climateOf({ latitude: -43, longitude: 100, lastFrost: '10-20', firstFrost: '04-28' }, []));
    expect(south?.south).toBe(true);
    expect(south?.meanC[30] ?? 99).toBeLessThan(south?.meanC[200] ?? 0);
  });

  it('tells the hemisphere from normals alone', () => {
    const turned = [...low.slice(6), ...low.slice(0, 6)];
    const turnedHigh = [...high.slice(6), ...high.slice(0, 6)];
    expect(climateYear(climateOf({ monthlyMinC: low, monthlyMaxC: high }, []))?.south).toBe(false);
    expect(climateYear(climateOf({ monthlyMinC: turned, monthlyMaxC: turnedHigh }, []))?.south).toBe(true);
  });

  it('says that a latitude is assumed where normals come without one', () => {
    expect(climateOf({ monthlyMinC: low, monthlyMaxC: high }, []).notes).toEqual(['normals-given', 'latitude-assumed']);
  });

  it('is an estimate from latitude alone, and unknown from nothing', () => {
    expect(climateOf({ latitude: 51 }, stations)).toMatchObject({ quality: 'latitude', notes: ['latitude-only'] });
    expect(climateOf(undefined, stations)).toMatchObject({ quality: 'none', notes: ['no-place'] });
    expect(climateOf({ region: 'BE' }, stations).quality).toBe('none');
    expect(climateOf({ lastFrost: '04-20' }, stations).quality).toBe('none');
  });

  it('refuses a frost date that is none', () => {
    expect(() => climateOf({ latitude: 51, lastFrost: '04-31', firstFrost: '10-28' }, [])).toThrow(RangeError);
  });

  it('assumes a usual daily swing where only minima are told, and says so', () => {
    const climate = climateOf({ latitude: 51, monthlyMinC: low }, []);
    expect(climate.notes).toContain('swing-assumed');
    expect(climate.maxC?.[0]).toBeCloseTo(10.6, 5);
  });
});

describe('a keeper of climates', () => {
  it('gives the same object for the same place, however it is written, and another for another', () => {
    const climateAt = climatesAt(stations);
    const first = climateAt({ latitude: 51, lastFrost: '04-20', firstFrost: '10-28' });
    expect(climateAt({ firstFrost: '10-28', lastFrost: '04-20', latitude: 51 })).toBe(first);
    expect(climateAt({ latitude: 51.1, lastFrost: '04-20', firstFrost: '10-28' })).not.toBe(first);
    expect(climateAt(undefined)).toBe(climateAt(undefined));
    expect(first).toEqual(climateOf({ latitude: 51, lastFrost: '04-20', firstFrost: '10-28' }, stations));
  });

  it('forgets the place asked for longest ago, and works it out again the same', () => {
    const climateAt = climatesAt([]);
    const first = climateAt({ latitude: 1 });
    for (let i = 0; i < 300; i += 1) climateAt({ latitude: 2 + i / 10 });
    expect(climateAt({ latitude: 1 })).not.toBe(first);
    expect(climateAt({ latitude: 1 })).toEqual(first);
  });
});

describe('a guessed climate', () => {
  it.each([
    ['two frost dates', { latitude: 42.79, lastFrost: '04-18', firstFrost: '10-15' }, { latitude: -42.79, lastFrost: '10-18', firstFrost: '04-16' }],
    ['latitude alone', { latitude: 51 }, { latitude: -51 }],
  ])('from %s is the same on the other side of the equator, day by day from midwinter on', (_, north, south) => {
    const [here, there] = [climateYear(climateOf(north, []))!, climateYear(climateOf(south, []))!];
    // The mirrored frost dates lie 183 days on, midwinter 182: a day's rounding.
    const day = 'lastFrost' in north ? 1 : 0;
    here.minC.forEach((low, i) => expect(there.minC[(i + day) % 365]).toBeCloseTo(low, 6));
    here.maxC.forEach((high, i) => expect(there.maxC[(i + day) % 365]).toBeCloseTo(high, 6));
    expect(there.nightSpreadC[25]).toBeCloseTo(here.nightSpreadC[25]!, 6);
  });
});

import { Body, Observer, SearchRiseSet } from 'astronomy-engine';
import { describe, expect, it } from 'vitest';
import { dayOf } from '../../../src/season/day.js';
import { daylength } from '../../../src/season/daylength.js';

const hoursOf = (text: string): number => {
  const [hours = 0, minutes = 0] = text.split(':').map(Number);
  return hours + minutes / 60;
};
const minutesApart = (a: number, b: number): number => Math.abs(a - b) * 60;

/** Sunrise to sunset around the noon of a day at longitude 0, by another library. */
const byAstronomyEngine = (iso: string, latitude: number): number | undefined => {
  const observer = new Observer(latitude, 0, 0);
  const noon = new Date(`${iso}T12:00:00Z`);
  const rise = SearchRiseSet(Body.Sun, observer, +1, noon, -1);
  const set = SearchRiseSet(Body.Sun, observer, -1, noon, 1);
  return rise && set ? (set.date.getTime() - rise.date.getTime()) / 3_600_000 : undefined;
};

// Against: astronomy-engine 2.1 (MIT), another implementation of the sun's place.
describe('the length of the day', () => {
  it.each([0, 23.4, 35.7, 45, 51.5, 55, -33.9, -45])('at %d degrees stays within 2 minutes of astronomy-engine all year', (latitude) => {
    for (let day = dayOf('2023-01-01'); day < dayOf('2024-01-01'); day += 9) {
      const iso = new Date(day * 86_400_000).toISOString().slice(0, 10);
      expect(minutesApart(daylength(day, latitude), byAstronomyEngine(iso, latitude) ?? Number.NaN), iso).toBeLessThan(2);
    }
  });

  it('at 60 degrees stays within 3 minutes', () => {
    for (let day = dayOf('2023-01-01'); day < dayOf('2024-01-01'); day += 9) {
      const iso = new Date(day * 86_400_000).toISOString().slice(0, 10);
      expect(minutesApart(daylength(day, 60), byAstronomyEngine(iso, 60) ?? Number.NaN), iso).toBeLessThan(3);
    }
  });

  // Against: astronomy-engine run for 2023 at sea level, longitude 0, to the minute.
  it.each([
    [0, ['12:07', '12:07', '12:07', '12:07', '12:07', '12:06', '12:07', '12:08']],
    [35.7, ['12:09', '13:05', '14:03', '14:35', '13:57', '12:08', '11:19', '9:44']],
    [51.5, ['12:13', '13:51', '15:36', '16:38', '15:25', '12:10', '10:44', '7:50']],
    [60, ['12:17', '14:33', '17:08', '18:52', '16:51', '12:12', '10:13', '5:52']],
    [-33.9, ['12:07', '11:15', '10:22', '9:54', '10:28', '12:08', '12:54', '14:25']],
    [-45, ['12:07', '10:50', '9:31', '8:46', '9:39', '12:10', '13:18', '15:37']],
  ] as const)('at %d degrees is as tabled on eight dates', (latitude, table) => {
    ['03-21', '04-15', '05-15', '06-21', '08-01', '09-23', '10-15', '12-21'].forEach((date, i) => {
      expect(minutesApart(daylength(dayOf(`2023-${date}`), latitude), hoursOf(table[i] ?? '')), date).toBeLessThan(1.6);
    });
  });

  // Against: American Meteorological Society, DStreme page, Washington DC 38.89 N, "total possible sunlight" (read).
  it.each([
    ['2009-01-23', '9:58'], ['2009-02-21', '11:02'], ['2009-03-21', '12:11'], ['2009-04-23', '13:33'], ['2009-05-21', '14:28'], ['2009-06-21', '14:54'],
    ['2009-07-19', '14:32'], ['2009-08-21', '13:27'], ['2009-09-21', '12:11'], ['2009-10-21', '10:57'], ['2009-11-22', '9:51'], ['2008-12-22', '9:26'],
  ])('at Washington on %s is %s as printed', (date, printed) => {
    expect(minutesApart(daylength(dayOf(date), 38.89), hoursOf(printed))).toBeLessThanOrEqual(2);
  });

  // Against: aa.quae.nl, "Position of the Sun: Tables", sunrise of 1 January 2002 in local mean solar time (read). Noon is 3.3 minutes late on that day.
  it.each([
    [50, '7:59'], [48, '7:50'], [44, '7:35'], [40, '7:22'], [36, '7:11'], [30, '6:56'], [20, '6:35'], [10, '6:17'], [0, '6:00'], [-10, '5:43'], [-20, '5:24'], [-30, '5:02'],
    [-34, '4:52'], [-40, '4:35'], [-46, '4:13'], [-50, '3:55'], [-56, '3:19'], [-60, '2:43'], [-64, '1:43'],
  ])('at %d degrees fits the printed sunrise %s of 1 January 2002', (latitude, sunrise) => {
    const expected = 2 * (12 + 3.3 / 60 - hoursOf(sunrise));
    expect(minutesApart(daylength(dayOf('2002-01-01'), latitude), expected)).toBeLessThanOrEqual(latitude < -55 ? 3 : 2);
  });

  // Against: chillR vignette, latitude 50.4, day 15: 8.467149 h (read); the formula it prints, Spencer 1971, is itself up to 2.5 minutes off at this latitude.
  it('at 50.4 degrees on 15 January is 8.467 h', () => {
    expect(minutesApart(daylength(dayOf('2023-01-15'), 50.4), 8.467149)).toBeLessThan(2.5);
  });

  it('is 24 h in the polar summer and 0 h in the polar winter, never anything else beyond', () => {
    expect(daylength(dayOf('2026-06-21'), 70)).toBe(24);
    expect(daylength(dayOf('2026-12-21'), 70)).toBe(0);
    expect(daylength(dayOf('2026-06-21'), -70)).toBe(0);
    expect(daylength(dayOf('2026-12-21'), -90)).toBe(24);
    expect(daylength(dayOf('2024-02-29'), 90)).toBe(0);
  });
});

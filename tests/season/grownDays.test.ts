import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { seasonTraits } from '../../src/advice/prepare.js';
import { seasonCalendar } from '../../src/season/calendar.js';
import { climateOf } from '../../src/season/climate.js';
import { type Day, dayOf } from '../../src/season/day.js';
import { grownDays } from '../../src/season/grownDays.js';
import { shipped, stations } from '../shipped.js';

const species = ['acer-palmatum', 'pinus-thunbergii', 'juniperus-chinensis', 'olea-europaea', 'ficus-microcarpa', 'zelkova-serrata'];
const calendars = fc.tuple(fc.constantFrom(...species), fc.constantFrom(...stations), fc.option(fc.integer({ min: 0, max: 3000 }), { nil: undefined })).map(([id, station, seen]) =>
  seasonCalendar(climateOf({ place: station.id }, stations), seasonTraits(shipped.species[id]!.traits), dayOf('2026-03-01'), seen === undefined ? [] : [{ phase: 'bud-swell', day: dayOf('2024-01-01') + (seen % 900) }]));
const days = fc.tuple(fc.nat(2000), fc.nat(900), fc.nat(900)).map(([from, first, second]): readonly [Day, Day, Day] => [dayOf('2022-01-01') + from, dayOf('2022-01-01') + from + first, dayOf('2022-01-01') + from + first + second]);

describe('days of growth between two days', () => {
  test('are never more than there are days, and those of two spans on end add up', () => {
    fc.assert(fc.property(calendars, days, (calendar, [from, between, to]) => {
      const all = grownDays(calendar, from, to);
      fc.pre(all !== undefined);
      expect(all).toBeGreaterThanOrEqual(0);
      expect(all).toBeLessThanOrEqual(to - from);
      expect(grownDays(calendar, from, between)! + grownDays(calendar, between, to)!).toBe(all);
    }), { numRuns: 400 });
  }, 60_000);

  test('of a maple in Cologne are some seven months of the year, and none between November and February', () => {
    const calendar = seasonCalendar(climateOf({ place: 'koeln-cologne-germany' }, stations), seasonTraits(shipped.species['acer-palmatum']!.traits), dayOf('2026-03-01'));
    const year = grownDays(calendar, dayOf('2026-01-10'), dayOf('2027-01-10'))!;
    expect(year).toBeGreaterThan(180);
    expect(year).toBeLessThan(250);
    expect(grownDays(calendar, dayOf('2026-11-15'), dayOf('2027-02-01'))).toBe(0);
  });

  test('of a fig in the tropics are all of them', () => {
    const tropics = stations.find((station) => Math.abs(station.latitude) < 5)!;
    const calendar = seasonCalendar(climateOf({ place: tropics.id }, stations), seasonTraits(shipped.species['ficus-microcarpa']!.traits), dayOf('2026-03-01'));
    expect(grownDays(calendar, dayOf('2026-01-10'), dayOf('2026-12-10'))).toBe(334);
  });

  test('indoors nobody can say', () => {
    const calendar = seasonCalendar(climateOf({ place: 'koeln-cologne-germany' }, stations), seasonTraits(shipped.species['ficus-microcarpa']!.traits), dayOf('2026-03-01'), [], 'heated-room');
    expect(grownDays(calendar, dayOf('2026-01-10'), dayOf('2026-12-10'))).toBeUndefined();
  });
});

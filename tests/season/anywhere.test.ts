import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seasonCalendar } from '../../src/season/calendar.js';
import type { Phase, SeasonTraits, Sighting } from '../../src/season/calendar.js';
import { climateOf } from '../../src/season/climate.js';
import type { Where } from '../../src/season/climate.js';
import { dayOf, isoOf } from '../../src/season/day.js';
import { frostOfYear } from '../../src/season/frostOfYear.js';
import { phasesOfYear, seasonFromSighting, seasonOn } from '../../src/season/standing.js';
import type { SeasonOn } from '../../src/season/standing.js';
import { lowland, stations } from './stations.js';

const phases: readonly Phase[] = ['dormant', 'bud-swell', 'bud-burst', 'leafing-out', 'extending', 'hardened-off', 'turning', 'leaf-fall', 'resting', 'growing'];
const order: Readonly<Record<SeasonTraits['model'], readonly Phase[]>> = {
  deciduous: ['dormant', 'bud-swell', 'bud-burst', 'leafing-out', 'extending', 'hardened-off', 'turning', 'leaf-fall'],
  evergreen: ['resting', 'bud-swell', 'bud-burst', 'leafing-out', 'extending', 'hardened-off'],
  'mild-evergreen': ['resting', 'growing'],
  tropical: ['resting', 'growing'],
  'dry-deciduous': ['dormant', 'growing', 'leaf-fall'],
};

const anyNumber = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const monthDay = fc.tuple(fc.integer({ min: 1, max: 12 }), fc.integer({ min: 1, max: 28 }))
  .map(([month, day]) => `${String(month).padStart(2, '0')}-${String(day).padStart(2, '0')}`);
const anyWhere: fc.Arbitrary<Where> = fc.oneof(
  fc.record({ latitude: fc.oneof(anyNumber(-90, 90), fc.constantFrom(-90, -66.6, -23.4, 0, 23.4, 66.6, 90)), longitude: anyNumber(-180, 180) }),
  fc.record({ latitude: anyNumber(-70, 70), lastFrost: monthDay, firstFrost: monthDay }),
  fc.constantFrom(...stations).map((station) => ({ place: station.id })),
  fc.record({ latitude: anyNumber(-90, 90), mean: anyNumber(-20, 32), half: anyNumber(-20, 20), swing: anyNumber(1, 20) }).map(({ latitude, mean, half, swing }) => {
    const wave = Array.from({ length: 12 }, (_, month) => mean + half * Math.cos((2 * Math.PI * (month - 6)) / 12));
    return { latitude, monthlyMinC: wave.map((value) => value - swing / 2), monthlyMaxC: wave.map((value) => value + swing / 2) };
  }),
);
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined });
const anyTraits: fc.Arbitrary<SeasonTraits> = fc.record({
  model: fc.constantFrom('deciduous', 'evergreen', 'mild-evergreen', 'tropical', 'dry-deciduous'),
  budSwell: maybe(fc.integer({ min: 1, max: 40 })), leafOut: maybe(fc.integer({ min: 10, max: 480 })), hardens: maybe(fc.integer({ min: 1, max: 120 })),
  turns: maybe(fc.integer({ min: -30, max: 60 })), leafFall: maybe(fc.integer({ min: -30, max: 70 })), minNightC: maybe(fc.integer({ min: 2, max: 22 })),
  coldWeeks: maybe(fc.integer({ min: 1, max: 30 })), restNeed: maybe(fc.constantFrom('obligate', 'optional', 'none')),
  restSeason: maybe(fc.constantFrom('winter', 'summer', 'dry', 'none')),
} as const).map((traits) => Object.fromEntries(Object.entries(traits).filter(([, value]) => value !== undefined)) as unknown as SeasonTraits);
const anyDay = fc.integer({ min: dayOf('2019-01-01'), max: dayOf('2033-12-31') });
const anySightings: fc.Arbitrary<readonly Sighting[]> = fc.array(fc.record({ phase: fc.constantFrom(...phases), day: anyDay }), { maxLength: 4 });

const numbersOf = (value: unknown): readonly number[] =>
  typeof value === 'number' ? [value] : typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersOf) : [];

const checkSound = (on: SeasonOn): void => {
  for (const number of numbersOf(on)) expect(Number.isFinite(number)).toBe(true);
  for (const name of ['growingDaysLeft', 'rootDaysLeft', 'daysToBudSwell', 'daysSinceLeafOut', 'daysToLastFrost', 'daysToFirstFrost'] as const) {
    const range = on[name];
    if (range === undefined || range === 'none') continue;
    expect(range.atLeast, name).toBeLessThanOrEqual(range.value);
    expect(range.value, name).toBeLessThanOrEqual(range.atMost);
    expect(range.atLeast, name).toBeGreaterThanOrEqual(0);
    expect(range.atMost, name).toBeLessThanOrEqual(366);
    expect(Number.isInteger(range.value), name).toBe(true);
  }
  expect(on.phase === undefined).toBe(on.phaseFrom === 'none');
  if (on.phase !== undefined && on.among !== undefined) expect(on.among).toContain(on.phase);
};

describe('anywhere on Earth, for any tree, whatever was seen', () => {
  it('the phases of a year come in order, without a gap or an overlap, and cover it once', () => {
    fc.assert(fc.property(anyWhere, anyTraits, anyDay, anySightings, (where, traits, day, sightings) => {
      const calendar = seasonCalendar(climateOf(where, stations), traits, day, sightings);
      const year = phasesOfYear(calendar);
      if (year.length === 0) {
        expect(calendar.notes.some((note) => note.startsWith('no-') || note === 'dry-season-unknown')).toBe(true);
        return;
      }
      year.forEach((one, i) => {
        expect(isoOf(one.from)).toMatch(/^\d{4}-\d{2}-\d{2}$/);
        expect(one.to).toBeGreaterThanOrEqual(one.from);
        if (i > 0) expect(one.from).toBe((year[i - 1]?.to ?? 0) + 1);
      });
      const first = year[0]?.from ?? 0;
      const last = year.at(-1)?.to ?? 0;
      expect(last - first + 1).toBeGreaterThanOrEqual(365);
      expect(last - first + 1).toBeLessThanOrEqual(366);
      expect(day).toBeGreaterThanOrEqual(first);
      expect(day).toBeLessThanOrEqual(last);
      const names = year.map((one) => one.phase);
      const known = names.includes('growing') ? (traits.model === 'dry-deciduous' ? order['dry-deciduous'] : order.tropical) : order[traits.model];
      const places = names.map((name) => known.indexOf(name));
      expect(places).not.toContain(-1);
      // In order round the year: at most one step backwards, where the cycle closes, and one more for a rest in summer.
      const rests = traits.restSeason === 'summer' ? 2 : 1;
      expect(places.filter((place, i) => i > 0 && place < (places[i - 1] ?? 0)).length).toBeLessThanOrEqual(rests);
    }), { numRuns: 250, seed: 11 });
  });

  it('no day of any year holds a number that is none, and every range holds its value', () => {
    fc.assert(fc.property(anyWhere, anyTraits, anyDay, anySightings, fc.constantFrom('outdoors', 'cold-frame', 'greenhouse', 'cool-room', 'heated-room'), (where, traits, day, sightings, standing) => {
      const calendar = seasonCalendar(climateOf(where, stations), traits, day, sightings, standing);
      for (let i = -200; i < 500; i += 23) checkSound(seasonOn(calendar, day + i));
      checkSound(seasonOn(calendar, dayOf('2024-02-29')));
      for (const number of numbersOf(frostOfYear(calendar))) expect(Number.isFinite(number)).toBe(true);
    }), { numRuns: 200, seed: 12 });
  });

  it('the phase of a day is the one that the year shows for it', () => {
    fc.assert(fc.property(anyWhere, anyTraits, anyDay, (where, traits, around) => {
      const calendar = seasonCalendar(climateOf(where, stations), traits, around);
      for (const { phase, from, to } of phasesOfYear(calendar)) {
        for (const day of [from, Math.floor((from + to) / 2), to]) expect(seasonOn(calendar, day).phase).toBe(phase);
      }
    }), { numRuns: 120, seed: 13 });
  });

  it('what was seen is the phase of that day', () => {
    fc.assert(fc.property(anyWhere, anyTraits, anyDay, fc.constantFrom(...phases), (where, traits, day, phase) => {
      const calendar = seasonCalendar(climateOf(where, stations), traits, day, [{ phase, day }]);
      const on = seasonOn(calendar, day);
      expect(on.phase === phase || (phase === 'dormant' && on.phase === 'resting') || (phase === 'resting' && on.phase === 'dormant')).toBe(true);
      expect(on.phaseFrom).toBe('seen');
    }), { numRuns: 200, seed: 14 });
  });

  it('growing days count down by one a day, until they are none', () => {
    fc.assert(fc.property(anyWhere, anyTraits, anyDay, (where, traits, around) => {
      const calendar = seasonCalendar(climateOf(where, stations), traits, around);
      let before = seasonOn(calendar, around).growingDaysLeft?.value;
      if (before === undefined || before >= 365) return;
      for (let i = 1; i < 365; i += 1) {
        const now = seasonOn(calendar, around + i).growingDaysLeft?.value ?? Number.NaN;
        // Down by one, level before bud swell, none after the end, or up to a whole season six weeks before the next (at once where the rest is shorter).
        expect(now === before - 1 || now === before || before <= 1 || now === 0).toBe(true);
        before = now;
      }
    }), { numRuns: 25, seed: 15 });
  });

  it('half a turn of the globe moves every date by half a year', () => {
    fc.assert(fc.property(anyNumber(0, 65), anyTraits, anyNumber(-5, 25), anyNumber(3, 18), (latitude, traits, mean, half) => {
      const wave = (shift: number) => Array.from({ length: 12 }, (_, month) => mean + half * Math.cos((2 * Math.PI * (month - 6.5 + shift)) / 12));
      const year = (north: boolean) => {
        const months = wave(north ? 0 : 6);
        const where = { latitude: north ? latitude : -latitude, monthlyMinC: months.map((c) => c - 5), monthlyMaxC: months.map((c) => c + 5) };
        return phasesOfYear(seasonCalendar(climateOf(where, []), traits, dayOf(north ? '2026-04-01' : '2025-10-01')));
      };
      const north = year(true);
      const south = year(false);
      expect(south.map((one) => one.phase)).toEqual(north.map((one) => one.phase));
      north.forEach((one, i) => expect(Math.abs(one.from - (south[i]?.from ?? Number.NaN) - 182.5), one.phase).toBeLessThanOrEqual(4.5));
    }), { numRuns: 120, seed: 16 });
  });

  it('a colder place never leafs out earlier', () => {
    fc.assert(fc.property(anyNumber(30, 65), anyNumber(2, 14), anyNumber(5, 15), (latitude, mean, half) => {
      const leafOut = (shift: number): number => {
        const months = Array.from({ length: 12 }, (_, month) => mean + shift + half * Math.cos((2 * Math.PI * (month - 6.5)) / 12));
        const calendar = seasonCalendar(climateOf({ latitude, monthlyMinC: months.map((c) => c - 5), monthlyMaxC: months.map((c) => c + 5) }, []), { model: 'deciduous' }, dayOf('2026-04-01'));
        return phasesOfYear(calendar).find((one) => one.phase === 'leafing-out')?.from ?? Infinity;
      };
      expect(leafOut(-1)).toBeGreaterThanOrEqual(leafOut(0));
    }), { numRuns: 100, seed: 17 });
  });
});

describe('a seen phase without place or date', () => {
  it('bounds what is left of the season', () => {
    expect(seasonFromSighting('bud-swell', 'outdoors').growingDaysLeft?.atLeast).toBe(95);
    expect(seasonFromSighting('extending', 'outdoors').growingDaysLeft?.atLeast).toBe(30);
    expect(seasonFromSighting('leaf-fall', 'outdoors').growingDaysLeft).toEqual({ value: 0, atLeast: 0, atMost: 0, sure: true });
    expect(seasonFromSighting('dormant', 'outdoors').growingDaysLeft).toBeUndefined();
    expect(seasonFromSighting('extending', 'greenhouse').growingDaysLeft?.atLeast).toBe(0);
    for (const phase of phases) checkSound(seasonFromSighting(phase, 'outdoors'));
  });

  it('is used where no place is told', () => {
    const calendar = seasonCalendar(climateOf(undefined, []), { model: 'deciduous' }, dayOf('2026-03-01'), [{ phase: 'bud-swell', day: dayOf('2026-03-01') }]);
    expect(seasonOn(calendar, dayOf('2026-03-01'))).toMatchObject({ phase: 'bud-swell', phaseFrom: 'seen' });
    expect(seasonOn(calendar, dayOf('2026-06-01')).phase).toBeUndefined();
  });
});

describe('the frosts of a year', () => {
  const frost = frostOfYear(seasonCalendar(climateOf(lowland, stations), { model: 'deciduous' }, dayOf('2026-06-01')));
  it('keep the stated medians, put the one-in-ten dates two weeks inside, and freeze pots longer than air', () => {
    expect(isoOf(frost.last ?? 0)).toBe('2026-04-20');
    expect(isoOf(frost.first ?? 0)).toBe('2026-10-28');
    expect((frost.lastOneInTen ?? 0) - (frost.last ?? 0)).toBe(15);
    expect(frost.lastAtRim ?? 0).toBeGreaterThan((frost.last ?? 0) + 5);
    expect(frost.firstAtRim ?? Infinity).toBeLessThan((frost.first ?? 0) - 5);
  });

  it('are not reliable in the tropics', () => {
    expect(frostOfYear(seasonCalendar(climateOf({ place: 'phuket-thailand' }, stations), { model: 'tropical' }, dayOf('2026-06-01')))).toEqual({ reliable: false });
  });
});

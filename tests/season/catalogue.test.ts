import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seasonTraits } from '../../src/advice/prepare.js';
import { type Calendar, type Phase, seasonCalendar, type SeasonTraits } from '../../src/season/calendar.js';
import { climateOf, type Where } from '../../src/season/climate.js';
import { climatesAt } from '../../src/season/climatesAt.js';
import { dayOf, isDate, isoOf } from '../../src/season/day.js';
import { frostOfYear } from '../../src/season/frostOfYear.js';
import { phasesOfYear, seasonFromSighting, type SeasonOn, seasonOn } from '../../src/season/standing.js';
import { shipped, stations } from '../shipped.js';

/** The phases that a tree can go through, in order of its year from midwinter on: those of shared/phases.yaml for its kind of year. */
const phasesOf = (model: SeasonTraits['model']): readonly Phase[] =>
  Object.entries(shipped.phases).flatMap(([phase, word]) => (word.models.includes(model) ? [phase as Phase] : []));

/** The order in which phases follow each other round the year. */
const round: readonly Phase[] = ['bud-swell', 'bud-burst', 'leafing-out', 'extending', 'growing', 'hardened-off', 'turning', 'leaf-fall', 'dormant', 'resting'];

/** Every tree of the catalogue, members of genera among them. Most share their season with a sister: each season is one kind of year. */
const everyTree = Object.values(shipped.species).map((species) => ({ id: species.id, traits: seasonTraits(species.traits) }));
const kinds = [...new Map(everyTree.map((tree) => [JSON.stringify(tree.traits), tree])).values()];

const wave = (mean: number, half: number, swing: number, warmest: number): { readonly monthlyMinC: readonly number[]; readonly monthlyMaxC: readonly number[] } => {
  const months = Array.from({ length: 12 }, (_, month) => mean + half * Math.cos((2 * Math.PI * (month - warmest)) / 12));
  return { monthlyMinC: months.map((c) => c - swing / 2), monthlyMaxC: months.map((c) => c + swing / 2) };
};
const anyNumber = (min: number, max: number): fc.Arbitrary<number> => fc.double({ min, max, noNaN: true });
const synthetic: fc.Arbitrary<Where> = fc.record({ latitude: anyNumber(-90, 90), mean: anyNumber(-25, 32), half: anyNumber(0, 25), swing: anyNumber(1, 20), warmest: fc.integer({ min: 0, max: 11 }) })
  .map(({ latitude, mean, half, swing, warmest }) => ({ latitude, ...wave(mean, half, swing, warmest) }));
const bundled: fc.Arbitrary<Where> = fc.constantFrom(...stations).map((station) => ({ place: station.id }));

/** Places at which a model of a year could break: both poles, the polar circles, the tropics, the equator, endless winter, endless heat, no seasons at all. */
const edges: readonly Where[] = [
  ...[90, 78, 66.6, 45, 23.4, 0.1].flatMap((latitude) => [{ latitude }, { latitude: -latitude }]),
  { latitude: 0 },
  { latitude: 89.9, ...wave(-18, 16, 6, 6) }, { latitude: -89.9, ...wave(-49, 16, 6, 0) },
  { latitude: 0, ...wave(27, 0, 8, 6) }, { latitude: -0.2, ...wave(13, 0.5, 10, 0) },
  { latitude: 50, ...wave(-30, 3, 8, 6) }, { latitude: -35, ...wave(34, 4, 12, 0) },
  ...['kiruna-sweden', 'san-juan-pr-puerto-rico', 'eldoret-kenya', 'alice-springs-australia', 'dunedin-new-zealand', 'naha-japan', 'fairbanks-intl-airport-ak', 'palermo-italy'].map((place) => ({ place })),
];

const counted = ['growingDaysLeft', 'rootDaysLeft', 'daysToBudSwell', 'daysSinceLeafOut', 'daysToLastFrost', 'daysToFirstFrost'] as const;
const measured = ['nightC', 'coldNightC', 'dayC', 'winterLowC'] as const;

/** What is wrong with a day's season, in words; plain comparisons, for hundreds of thousands of days are looked at. */
const wrongWith = (on: SeasonOn, model: SeasonTraits['model'], refused: boolean): readonly string[] => {
  const faults: string[] = [];
  for (const name of [...counted, ...measured]) {
    const range = on[name];
    if (range === undefined || range === 'none') continue;
    if (![range.value, range.atLeast, range.atMost].every(Number.isFinite)) faults.push(`${name} holds no number`);
    if (range.atLeast > range.value || range.value > range.atMost) faults.push(`${name} ${range.value} lies outside of ${range.atLeast}..${range.atMost}`);
  }
  for (const name of counted) {
    const range = on[name];
    if (range !== undefined && range !== 'none' && (range.atLeast < 0 || range.atMost > 366)) faults.push(`${name} ${range.atLeast}..${range.atMost} is no count of days of a year`);
  }
  if (!Number.isFinite(on.plusMinusDays) || on.plusMinusDays < 0) faults.push(`plusMinusDays ${on.plusMinusDays}`);
  // To the second: sunrise and sunset come in milliseconds.
  if (on.dayLengthH !== undefined && !(on.dayLengthH >= 0 && on.dayLengthH <= 24 + 1 / 3600)) faults.push(`${on.dayLengthH} hours of light`);
  if (refused !== (on.phase === undefined)) faults.push(refused ? `a phase ${on.phase ?? ''} in a year that was refused` : 'no phase');
  if (on.phase !== undefined && !allowedPhases(model).includes(on.phase)) faults.push(`phase ${on.phase} in a ${model} year`);
  if (on.among !== undefined && on.phase !== undefined && !on.among.includes(on.phase)) faults.push(`phase ${on.phase} is none of ${on.among.join()}`);
  return faults;
};

/** A sleeper that need not sleep is treated as a mild-winter evergreen where there is no winter. */
const allowedPhases = (model: SeasonTraits['model']): readonly Phase[] => {
  const own = phasesOf(model);
  return model === 'deciduous' || model === 'evergreen' ? [...own, ...phasesOf('mild-evergreen')] : own;
};

/** Faults of a whole growing year. */
const wrongWithYear = (calendar: Calendar, traits: SeasonTraits, around: number): readonly string[] => {
  const year = phasesOfYear(calendar);
  if (year.length === 0) return calendar.notes.some((note) => note.startsWith('no-') || note === 'dry-season-unknown') ? [] : ['a year without phases, and no word why'];
  const faults: string[] = [];
  year.forEach(({ phase, from, to }, i) => {
    if (!isDate(isoOf(from)) || !isDate(isoOf(to))) faults.push(`${from}..${to} are no dates`);
    if (to < from) faults.push(`${phase} ends before it begins`);
    if (i > 0 && from !== year[i - 1]!.to + 1) faults.push(`a gap or an overlap before ${phase}`);
    if (i > 0 && phase === year[i - 1]!.phase) faults.push(`${phase} twice on end`);
  });
  const days = year.at(-1)!.to - year[0]!.from + 1;
  const leapDays = [2023, 2024, 2025, 2026, 2027, 2028].map((one) => `${one}-02-29`).filter(isDate).map(dayOf).filter((day) => day >= year[0]!.from && day <= year.at(-1)!.to).length;
  if (days !== 365 + leapDays) faults.push(`the year has ${days} days`);
  if (around < year[0]!.from || around > year.at(-1)!.to) faults.push('the year does not hold the day that was asked for');
  const places = year.map(({ phase }) => round.indexOf(phase));
  const back = places.filter((place, i) => i > 0 && place < places[i - 1]!).length;
  // The year closes once; a rest in summer goes back to growth once more.
  if (back > (traits.restSeason === 'summer' ? 2 : 1)) faults.push(`out of order: ${year.map(({ phase }) => phase).join(', ')}`);
  return faults;
};

const climateAt = climatesAt(stations);

/** All faults of a tree's years at a place, 2024 with its leap day among them. */
const faultsAt = (where: Where, tree: (typeof everyTree)[number], step: number): readonly string[] => {
  const climate = climateAt(where);
  const faults = new Set<string>();
  const start = dayOf('2024-01-01');
  const calendar = seasonCalendar(climate, tree.traits, dayOf('2024-02-29'));
  for (const fault of wrongWithYear(calendar, tree.traits, dayOf('2024-02-29'))) faults.add(fault);
  for (const fault of wrongWithYear(seasonCalendar(climate, tree.traits, dayOf('2026-09-15')), tree.traits, dayOf('2026-09-15'))) faults.add(fault);
  const refused = phasesOfYear(calendar).length === 0;
  let growing = 0;
  for (let day = start; day < start + 366; day += step) {
    const on = seasonOn(calendar, day);
    growing = Math.max(growing, on.growingDaysLeft?.value ?? 0);
    for (const fault of wrongWith(on, tree.traits.model, refused)) faults.add(`${isoOf(day)}: ${fault}`);
  }
  if (!refused && growing === 0 && !calendar.notes.includes('no-summer-here')) faults.add('phases of growth, and no day of growth left on any day');
  for (const fault of wrongWith(seasonOn(calendar, dayOf('2024-02-29')), tree.traits.model, refused)) faults.add(`29 February: ${fault}`);
  for (const [name, value] of Object.entries(frostOfYear(calendar))) if (typeof value === 'number' && !isDate(isoOf(value))) faults.add(`frost ${name} is no date`);
  return [...faults].slice(0, 5).map((fault) => `${tree.id} at ${JSON.stringify(where)}: ${fault}`);
};

describe('every tree of the catalogue, wherever it stands', () => {
  it('has one of the five kinds of year, and the phases of each kind follow in one order', () => {
    expect(everyTree.length).toBeGreaterThan(200);
    expect(new Set(everyTree.map((tree) => tree.traits.model))).toEqual(new Set(['deciduous', 'evergreen', 'mild-evergreen', 'tropical', 'dry-deciduous']));
    expect(new Set(Object.keys(shipped.phases))).toEqual(new Set(round));
  });

  it('has a sound season on every day of a leap year, at the poles, the equator and wherever a year could break', () => {
    expect(edges.flatMap((where, i) => kinds.flatMap((tree, j) => faultsAt(where, tree, (i + j) % 12 === 0 ? 1 : 13))).slice(0, 12)).toEqual([]);
  });

  it('has a sound season on every day of a leap year at any bundled place', () => {
    fc.assert(fc.property(bundled, fc.constantFrom(...everyTree), (where, tree) => { expect(faultsAt(where, tree, 1)).toEqual([]); }), { numRuns: 150 });
  });

  it('has a sound season on every day of a leap year in any climate, likely or not', () => {
    fc.assert(fc.property(synthetic, fc.constantFrom(...everyTree), (where, tree) => { expect(faultsAt(where, tree, 1)).toEqual([]); }), { numRuns: 150 });
  });

  it('goes through its year in the same order south of the equator as north of it, half a year later', () => {
    const drawn = fc.record({ latitude: anyNumber(2, 65), mean: anyNumber(-5, 27), half: anyNumber(2, 18), swing: anyNumber(4, 16) })
      // Where no month is warmer than at the tree line (6.4 C: Körner & Paulsen 2004, from memory) warmth gathers so slowly that months of unequal length tell.
      .filter(({ mean, half }) => mean + half > 6.4);
    fc.assert(fc.property(drawn, fc.constantFrom(...kinds), ({ latitude, mean, half, swing }, { traits }) => {
      const year = (north: boolean, warmer: number) => phasesOfYear(seasonCalendar(climateOf({ latitude: north ? latitude : -latitude, ...wave(mean + warmer, half, swing, north ? 6.5 : 0.5) }, []), traits, dayOf(north ? '2026-04-01' : '2026-10-01')));
      const same = (one: ReturnType<typeof year>, other: ReturnType<typeof year>): boolean =>
        one.length === other.length && one.every(({ phase, from }, i) => phase === other[i]!.phase && Math.abs(other[i]!.from - from - 182.5) <= 5);
      const south = year(false, 0);
      // Where a hair of warmth alone makes the difference the place stands on an edge, and half a day of rounding decides.
      const norths = [0, 0.2, -0.2].map((warmer) => year(true, warmer));
      expect(norths.some((north) => same(north, south)), JSON.stringify([norths[0], south])).toBe(true);
    }), { numRuns: 120 });
  });

  it('leaves at least as many growing days at the end of a spring phase as that phase is taken to tell, in 98 of 100 places and more', () => {
    for (const phase of ['bud-swell', 'bud-burst', 'leafing-out', 'extending'] as const) {
      const least = seasonFromSighting(phase, 'outdoors').growingDaysLeft!.atLeast;
      const left = stations.filter((_, i) => i % 20 === 0).flatMap((station) => kinds.flatMap(({ traits }) => {
        const calendar = seasonCalendar(climateAt({ place: station.id }), traits, dayOf('2026-06-01'));
        const last = phasesOfYear(calendar).find((one) => one.phase === phase)?.to;
        return last === undefined ? [] : [seasonOn(calendar, last).growingDaysLeft!.value];
      }));
      expect(left.length).toBeGreaterThan(1000);
      expect(left.filter((days) => days >= least).length / left.length, phase).toBeGreaterThan(0.98);
    }
  });

  it('would be told of: a range turned round and a phase of another kind of year are faults', () => {
    const on = seasonOn(seasonCalendar(climateOf({ place: 'zurich-switzerland' }, stations), { model: 'deciduous' }, dayOf('2026-06-01')), dayOf('2026-06-01'));
    expect(wrongWith(on, 'deciduous', false)).toEqual([]);
    expect(wrongWith({ ...on, nightC: { value: 3, atLeast: 5, atMost: 7, sure: true } }, 'deciduous', false)).toEqual(['nightC 3 lies outside of 5..7']);
    expect(wrongWith({ ...on, dayC: { value: Number.NaN, atLeast: 5, atMost: 7, sure: true } }, 'deciduous', false)).toContain('dayC holds no number');
    expect(wrongWith({ ...on, phase: 'turning' }, 'tropical', false)).toEqual(['phase turning in a tropical year']);
  });
});

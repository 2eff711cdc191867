import { beforeAll, describe, expect, it } from 'vitest';
import type { Year } from '../../src/advice/year.js';
import type { YearQuestion } from '../../src/advisor.js';
import { dayOf, isoOf } from '../../src/season/day.js';
import { advisor, stations } from '../shipped.js';

/* Invented trees. */
const zurich = stations.find((station) => station.id === 'zurich-switzerland')!;
const rotated = (months: readonly number[]): number[] => [...months.slice(6), ...months.slice(0, 6)];
const strong = { vigour: 'strong', health: 'sound', stage: 'developing' } as const;

const questions: Readonly<Record<string, YearQuestion>> = {
  'a maple in a maritime garden': { tree: { species: 'acer-palmatum', ...strong, lastRepotted: '2024-03' }, where: { place: 'koeln-cologne-germany' }, from: '2026-01-01' },
  'a pine where winters are hard, in a leap year': { tree: { species: 'pinus-thunbergii', ...strong }, where: { place: 'minneapolis-st-paul-mn' }, from: '2024-02-29' },
  'a beech south of the equator': { tree: { species: 'fagus-sylvatica', ...strong, log: [{ op: 'repot', date: '2025-08-20' }] }, where: { place: 'dunedin-new-zealand' }, from: '2025-07-01' },
  'a fig tree in the tropics': { tree: { species: 'ficus-microcarpa', ...strong }, where: { place: 'phuket-thailand' }, from: '2026-03-15' },
  'an olive that is known by latitude alone': { tree: { species: 'olea-europaea' }, where: { latitude: -34 }, from: '2026-06-10' },
  'a hornbeam that is known by latitude alone': { tree: { species: 'carpinus-betulus', health: 'sound' }, where: { latitude: 47 }, from: '2026-01-01' },
  'a juniper whose place is not told': { tree: { species: 'juniperus-chinensis', vigour: 'weak' }, from: '2026-01-01' },
  'an elm in a greenhouse': { tree: { species: 'ulmus-parvifolia', ...strong, standing: 'greenhouse' }, where: { place: 'edinburgh-united-kingdom' }, from: '2026-01-01' },
};

const years = new Map<string, Year>();
beforeAll(async () => { for (const [name, question] of Object.entries(questions)) years.set(name, await advisor.year(question)); }, 60_000);

const days = 365;

describe.each(Object.keys(questions))('a year of %s', (name) => {
  it('covers each of its 365 days once with every operation, without a gap or an overlap', () => {
    const year = years.get(name)!;
    const start = dayOf(questions[name]!.from);
    expect([year.from, year.to]).toEqual([isoOf(start), isoOf(start + days - 1)]);
    expect(year.operations.length).toBeGreaterThan(20);
    for (const { label, runs } of year.operations) {
      expect(runs[0]!.from, label).toBe(year.from);
      expect(runs.at(-1)!.to, label).toBe(year.to);
      runs.forEach((run, i) => {
        expect(run.to >= run.from, label).toBe(true);
        if (i > 0) expect(dayOf(run.from), label).toBe(dayOf(runs[i - 1]!.to) + 1);
      });
    }
  });

  it('joins days of one verdict: two runs on end differ in what they say', () => {
    for (const { label, runs } of years.get(name)!.operations) {
      runs.slice(1).forEach((run, i) => {
        const before = runs[i]!;
        expect([run.verdict, run.settled, run.because?.id], label).not.toEqual([before.verdict, before.settled, before.because?.id]);
      });
    }
  });

  it('gives the verdict that asking on that day gives', async () => {
    const year = years.get(name)!;
    const { tree, where } = questions[name]!;
    /* The ends of some runs of each, where a mistake of a day would show, and a day between. */
    for (const { label, operation, runs } of year.operations) {
      /* By latitude alone much hangs on estimates, and a verdict is settled on one day and not on the next: there every run is looked at. */
      const step = name.includes('hornbeam') ? 1 : Math.max(1, Math.floor(runs.length / 3));
      for (const run of runs.filter((_, j) => j % step === 0)) {
        for (const day of new Set([dayOf(run.from), Math.floor((dayOf(run.from) + dayOf(run.to)) / 2), dayOf(run.to)])) {
          const fresh = await advisor.verdict({ tree, operation, date: isoOf(day), ...(where === undefined ? {} : { where }) });
          expect({ verdict: fresh.verdict, settled: fresh.settled }, `${label} on ${isoOf(day)}`).toEqual({ verdict: run.verdict, settled: run.settled });
          if (run.because === undefined) expect(fresh.rules, label).toEqual([]);
          else expect(fresh.rules.map((rule) => `${rule.rule}.title`), `${label} on ${isoOf(day)}`).toContain(run.because.id);
        }
      }
    }
  }, 30_000);

  it('shows phases in order without an overlap, or none at all where nothing tells them', () => {
    const { phases } = years.get(name)!;
    phases.slice(1).forEach((phase, i) => {
      expect(dayOf(phase.from)).toBe(dayOf(phases[i]!.to) + 1);
      expect(phase.phase).not.toBe(phases[i]!.phase);
    });
    expect(phases.reduce((sum, { from, to }) => sum + dayOf(to) - dayOf(from) + 1, 0)).toBe(name.includes('not told') || name.includes('greenhouse') ? 0 : days);
    for (const { plusMinusDays } of phases) expect(plusMinusDays).toBeGreaterThanOrEqual(0);
  });
});

describe('a garden turned round the globe', () => {
  it('goes through the same phases half a year later, and its operations through the same verdicts', async () => {
    const at = async (north: boolean): Promise<Year> => await advisor.year({
      tree: { species: 'acer-palmatum', ...strong },
      where: { latitude: north ? zurich.latitude : -zurich.latitude, monthlyMinC: north ? [...zurich.minC] : rotated(zurich.minC), monthlyMaxC: north ? [...zurich.maxC] : rotated(zurich.maxC) } as unknown as NonNullable<YearQuestion['where']>,
      from: north ? '2026-01-01' : '2026-07-03',
      operations: [{ op: 'repot' }, { op: 'cut-back' }, { op: 'defoliate' }, { op: 'wire' }],
    });
    const [north, south] = [await at(true), await at(false)];
    expect(south.phases.map(({ phase }) => phase)).toEqual(north.phases.map(({ phase }) => phase));
    expect(new Set(north.phases.map(({ phase }) => phase)).size).toBe(8);
    north.phases.slice(1).forEach((phase, i) => expect(Math.abs(dayOf(south.phases[i + 1]!.from) - dayOf(phase.from) - 183), phase.phase).toBeLessThanOrEqual(4));
    for (const [i, operation] of north.operations.entries()) {
      const marks = (year: Year): readonly string[] => year.operations[i]!.runs.flatMap((run) => Array.from({ length: dayOf(run.to) - dayOf(run.from) + 1 }, () => run.verdict));
      const [here, there] = [marks(north), marks(south)];
      /* Law 5, day by day: the mirrored verdict lies within four days. */
      const off = here.filter((verdict, day) => !there.slice(Math.max(0, day - 4), day + 5).includes(verdict));
      expect(off.length, operation.label).toBe(0);
    }
  });
});

describe('the operations of a year', () => {
  it('are each in its usual way, or those that are asked for and no others', async () => {
    const question = questions['a maple in a maritime garden']!;
    const all = years.get('a maple in a maritime garden')!;
    expect(new Set(all.operations.map(({ op }) => op))).toEqual(new Set(Object.keys(advisor.knowledge.operations)));
    const two = await advisor.year({ ...question, operations: [{ op: 'repot', rootsRemoved: 0.3 }, { op: 'wire' }] });
    expect(two.operations.map(({ op }) => op)).toEqual(['repot', 'wire']);
    expect(new Set(two.operations.map(({ label }) => label)).size).toBe(2);
  });

  it('change with the season: what may be done to a maple is not the same in January, April and July', () => {
    const on = (date: string): string => years.get('a maple in a maritime garden')!.operations.map(({ runs }) => runs.find((run) => run.from <= date && date <= run.to)!.verdict).join();
    expect(new Set(['2026-01-15', '2026-04-15', '2026-07-15'].map(on)).size).toBe(3);
  });

  it('have frost in the cold place, none in the tropics, and light hours by month where the latitude is known', () => {
    expect(years.get('a pine where winters are hard, in a leap year')!.frost.reliable).toBe(true);
    expect(years.get('a fig tree in the tropics')!.frost.reliable).toBe(false);
    const { daylengthH } = years.get('a beech south of the equator')!;
    expect(daylengthH).toHaveLength(12);
    expect(daylengthH.find(({ date }) => date.endsWith('12-01') || date.endsWith('01-01'))!.hours).toBeGreaterThan(15);
    expect(years.get('a juniper whose place is not told')!.daylengthH).toEqual([]);
  });
});

import { stripVTControlCharacters } from 'node:util';
import { beforeAll, describe, expect, it } from 'vitest';
import type { Year } from '../../src/advice/year.js';
import { printYear } from '../../src/cli/printYear.js';
import { dayOf } from '../../src/season/day.js';
import { advisor, shipped } from '../shipped.js';

const strong = { vigour: 'strong', health: 'sound', stage: 'developing' } as const;
const questions = {
  'a maple in a maritime place': { tree: { species: 'acer-palmatum', ...strong }, where: { place: 'koeln-cologne-germany' }, from: '2026-01-01' },
  'an olive south of the equator': { tree: { species: 'olea-europaea' }, where: { place: 'adelaide-australia' }, from: '2025-07-15' },
  'a juniper whose place is not told': { tree: { species: 'juniperus-chinensis' }, from: '2026-01-01' },
  'a pine where frost never ends': { tree: { species: 'pinus-mugo', ...strong }, where: { latitude: 78, monthlyMinC: [-30, -30, -28, -20, -10, -4, -2, -3, -8, -18, -25, -28], monthlyMaxC: [-20, -20, -18, -10, -2, 3, 5, 4, -1, -9, -16, -19] }, from: '2026-01-01' },
} as const;
const names = Object.keys(questions) as (keyof typeof questions)[];
const years = new Map<string, Year>();
beforeAll(async () => { for (const name of names) years.set(name, await advisor.year(questions[name] as unknown as Parameters<typeof advisor.year>[0])); }, 60_000);

const marks = { allowed: 'o', risky: '!', 'advise-against': 'x' } as const;

/** The lines below the title: the months, the phases, then the operations. */
const below = (year: Year, width: number): readonly string[] => {
  const lines = stripVTControlCharacters(printYear(year, shipped, { width, units: 'metric' })).split('\n');
  return lines.slice(lines.indexOf('') + 1);
};

/** The lines between the months and the legend: first the phases, then the operations. */
const strips = (year: Year, width: number): readonly string[] => below(year, width).slice(1, 2 + year.operations.length);

describe.each(names)('the strips of %s', (name) => {
  it.each([80, 140])('keep within %d columns', (width) => {
    const year = years.get(name)!;
    const lengths = strips(year, width).map((line) => line.length);
    expect(Math.max(...lengths)).toBeLessThanOrEqual(width);
    expect(new Set(lengths).size).toBe(1);
    for (const line of below(year, width)) expect(line.length).toBeLessThanOrEqual(width);
  });

  it.each([80, 140])('read without colour: at %d columns each mark is the verdict of its days, by letter alone', (width) => {
    const year = years.get(name)!;
    const [, ...rows] = strips(year, width);
    expect(rows).toHaveLength(year.operations.length);
    const shown = new Set<string>();
    rows.forEach((row, i) => {
      const { runs } = year.operations[i]!;
      const columns = /\s([o!x?]+)$/.exec(row)![1]!;
      [...columns].forEach((mark, column) => {
        const from = dayOf(year.from) + (column * 365) / columns.length;
        const within = runs.filter((run) => dayOf(run.from) <= from + 365 / columns.length && dayOf(run.to) >= from - 1);
        expect(within.map((run) => (run.settled ? marks[run.verdict] : '?')), `${year.operations[i]!.label}, column ${column}`).toContain(mark);
        shown.add(mark);
      });
    });
    expect(shown.size).toBeGreaterThanOrEqual(2);
  });

  it('explain every mark that they use', () => {
    const year = years.get(name)!;
    const lines = stripVTControlCharacters(printYear(year, shipped, { width: 140, units: 'metric' })).split('\n');
    const legend = lines.find((line) => line.startsWith('o allowed'))!;
    for (const words of ['o allowed', '! risky', 'x advise against', '? depends on what is not told']) expect(legend).toContain(words);
    const after = lines[lines.indexOf(legend) + 1]!;
    const used = new Set(/[.sblegh?tf]+$/.exec(lines[3]!)![0]);
    if (year.phases.length === 0) expect([after, [...used]]).toEqual(['phases are not known here', ['?']]);
    else for (const mark of used) expect(after).toMatch(new RegExp(`(^| )${mark === '.' ? '\\.' : mark} `));
  });

  it('hold no value that is none, and say something of the frost', () => {
    const text = stripVTControlCharacters(printYear(years.get(name)!, shipped, { width: 140, units: 'metric' }));
    expect(text).not.toMatch(/NaN|undefined|\[object/);
    expect(text).toMatch(/^(frost: last|no frost to be relied on|frost all year|frost is not known here)/m);
  });
});

describe('the strips of a year', () => {
  it('name the months above the days that they hold', () => {
    const year = years.get('a maple in a maritime place')!;
    const lines = stripVTControlCharacters(printYear(year, shipped, { width: 140, units: 'metric' })).split('\n');
    const months = lines[2]!;
    for (const [at, month] of ['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'].entries()) {
      const first = lines[3]!.length - /[.sblegh?tf]+$/.exec(lines[3]!)![0].length;
      expect(Math.abs((months.indexOf(month) - first) / (lines[3]!.length - first) - at / 12), month).toBeLessThan(0.03);
    }
  });

  it('show the maple dormant in January, leafing out in April and hardened off in August', () => {
    const year = years.get('a maple in a maritime place')!;
    const [phases = ''] = strips(year, 140);
    const row = /[.sblegh?tf]+$/.exec(phases)![0];
    const on = (iso: string): string => row[Math.floor(((dayOf(iso) - dayOf(year.from)) * row.length) / 365)]!;
    expect(on('2026-01-15')).toBe('.');
    expect(['b', 'l']).toContain(on('2026-04-20'));
    expect(on('2026-08-10')).toBe('h');
  });

  it('cut a long label short rather than widen the line', () => {
    const year = years.get('a maple in a maritime place')!;
    const long = { ...year, operations: year.operations.map((operation) => ({ ...operation, label: `${operation.label} ${'and so on '.repeat(12)}` })) };
    const lines = strips(long, 80);
    expect(Math.max(...lines.map((line) => line.length))).toBeLessThanOrEqual(80);
    expect(lines.filter((line) => line.includes('…'))).toHaveLength(year.operations.length);
  });
});

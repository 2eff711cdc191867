import { beforeAll, describe, expect, it } from 'vitest';
import { message } from '../../src/advice/message.js';
import type { Year } from '../../src/advice/year.js';
import { dayOf, isoOf } from '../../src/season/day.js';
import { element } from '../../src/picture/svg.js';
import { yearPicture } from '../../src/picture/yearPicture.js';
import { advisor, shipped } from '../shipped.js';
import { all, type Element, named, readXml } from './readXml.js';

const wording = (id: string, params: Readonly<Record<string, string>> = {}): string => message(shipped, id, params).text;
const draw = (year: Year, width?: number): Element => readXml(yearPicture(year, wording, width));

const strong = { vigour: 'strong', health: 'sound', stage: 'developing' } as const;
const questions = {
  'a pine in a cold continental place': { tree: { species: 'pinus-sylvestris', ...strong }, where: { place: 'minneapolis-st-paul-mn' }, from: '2026-01-01' },
  'a maple in a maritime place': { tree: { species: 'acer-palmatum', ...strong }, where: { place: 'koeln-cologne-germany' }, from: '2026-02-11' },
  'a fig tree in the tropics': { tree: { species: 'ficus-microcarpa', ...strong }, where: { place: 'phuket-thailand' }, from: '2024-02-29' },
  'an olive south of the equator': { tree: { species: 'olea-europaea' }, where: { place: 'adelaide-australia' }, from: '2026-07-01' },
  'a juniper whose place is not told': { tree: { species: 'juniperus-chinensis' }, from: '2026-01-01' },
} as const;
const names = Object.keys(questions) as (keyof typeof questions)[];
const years = new Map<string, Year>();
beforeAll(async () => { for (const name of names) years.set(name, await advisor.year(questions[name])); }, 60_000);

const verdicts = ['allowed', 'risky', 'advise-against'] as const;

/** Where the days lie, read off the rows of the picture itself. */
const daysFrom = 232;
const daysTo = 788;

/** The bars of the operations: each in a group of its own, under the title that names days and verdict. */
const bars = (svg: Element): readonly Element[] => named(svg, 'g').filter((group) => group.children[0]?.name === 'title');

describe.each(names)('the picture of a year of %s', (name) => {
  it('is well-formed SVG with the role of an image, a title and a description that it points to', () => {
    const svg = draw(years.get(name)!);
    expect(svg.name).toBe('svg');
    expect(svg.attributes).toMatchObject({ xmlns: 'http://www.w3.org/2000/svg', role: 'img' });
    const [title, desc] = svg.children;
    expect([title?.name, desc?.name]).toEqual(['title', 'desc']);
    expect(svg.attributes['aria-labelledby']?.split(' ')).toEqual([title!.attributes['id'], desc!.attributes['id']]);
    expect(title!.text).toContain(years.get(name)!.label);
    for (const { label } of years.get(name)!.operations) expect(desc!.text).toContain(label);
    const ids = all(svg).flatMap((one) => one.attributes['id'] ?? []);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it.each([800, 340])('holds no number that is none, and nothing that lies beyond its rim, at %d px', (wide) => {
    const xml = yearPicture(years.get(name)!, wording, wide);
    expect(xml).not.toMatch(/NaN|undefined|Infinity|\[object/);
    const svg = draw(years.get(name)!, wide);
    const [width, height] = [Number(svg.attributes['width']), Number(svg.attributes['height'])];
    expect(svg.attributes['viewBox']).toBe(`0 0 ${width} ${height}`);
    const within = all(svg).filter((one) => one.name !== 'pattern');
    for (const element of within) {
      for (const key of ['x', 'x1', 'x2', 'y', 'y1', 'y2', 'width', 'height'] as const) {
        const value = element.attributes[key];
        if (value === undefined) continue;
        expect(Number.isFinite(Number(value)), `${element.name} ${key} ${value}`).toBe(true);
        expect(Number(value), `${element.name} ${key}`).toBeGreaterThanOrEqual(0);
        expect(Number(value), `${element.name} ${key}`).toBeLessThanOrEqual(key.startsWith('y') || key === 'height' ? height : width);
      }
      if (element.name === 'rect') {
        expect(Number(element.attributes['x'] ?? 0) + Number(element.attributes['width'])).toBeLessThanOrEqual(width + 0.05);
        expect(Number(element.attributes['y'] ?? 0) + Number(element.attributes['height'])).toBeLessThanOrEqual(height + 0.05);
      }
    }
  });

  it.each([800, 340])('leaves room for its words at %d px: no line of text runs over the rim, by a width of 0.6 of its size for each letter', (wide) => {
    const svg = draw(years.get(name)!, wide);
    for (const text of named(svg, 'text')) {
      const size = Number(text.attributes['font-size'] ?? 16);
      const reach = text.text.length * size * 0.6;
      const x = Number(text.attributes['x']);
      const end = text.attributes['text-anchor'] === 'end';
      expect(end ? x - reach : x + reach, text.text).toBeGreaterThanOrEqual(0);
      expect(end ? x : x + reach, text.text).toBeLessThanOrEqual(Number(svg.attributes['width']));
    }
  });

  it('stands each operation above its strip where the page is narrow, every one named', () => {
    const svg = draw(years.get(name)!, 340);
    expect(svg.attributes['width']).toBe('340');
    const texts = named(svg, 'text');
    for (const { label } of years.get(name)!.operations) expect(texts.filter((text) => text.attributes['x'] === '12').map((text) => text.text)).toContain(label);
    for (const bar of bars(svg)) expect(Number(named(bar, 'rect')[0]!.attributes['x'])).toBeGreaterThanOrEqual(12);
  });

  it('has a legend entry for each verdict and for what is not settled, in the words of the wording', () => {
    const svg = draw(years.get(name)!);
    const texts = named(svg, 'text').map((text) => text.text);
    for (const verdict of [...verdicts, 'unsettled']) expect(texts).toContain(wording(`year.legend.${verdict}`));
  });

  it('names every phase, where it stands or under the rows with its first day', () => {
    const year = years.get(name)!;
    const texts = named(draw(year), 'text').map((text) => text.text);
    for (const { phase, from } of year.phases) {
      const words = phase.replaceAll('-', ' ');
      const day = new Date(`${from}T00:00Z`).toLocaleDateString('en-GB', { day: 'numeric', month: 'short', timeZone: 'UTC' }).replace('Sept', 'Sep');
      expect(texts.includes(words) || texts.includes(`${words} ${day}`), `${words} ${day}`).toBe(true);
    }
  });

  it('gives each operation one row of bars that cover the year once, with days and verdict under each', () => {
    const year = years.get(name)!;
    const drawn = bars(draw(year));
    expect(drawn).toHaveLength(year.operations.reduce((sum, { runs }) => sum + runs.length, 0));
    const rows = new Map<string, { readonly x: number; readonly width: number }[]>();
    for (const group of drawn) {
      const rect = group.children[1]!;
      rows.set(rect.attributes['y']!, [...(rows.get(rect.attributes['y']!) ?? []), { x: Number(rect.attributes['x']), width: Number(rect.attributes['width']) }]);
      expect(group.children[0]!.text).toMatch(/^\d{1,2} \w{3} – \d{1,2} \w{3}: /);
    }
    expect(rows.size).toBe(year.operations.length);
    for (const row of rows.values()) {
      const sorted = row.toSorted((a, b) => a.x - b.x);
      expect(sorted[0]!.x).toBe(daysFrom);
      expect(sorted.at(-1)!.x + sorted.at(-1)!.width).toBeCloseTo(daysTo, 1);
      sorted.slice(1).forEach((bar, i) => expect(Math.abs(bar.x - sorted[i]!.x - sorted[i]!.width)).toBeLessThan(0.15));
    }
  });

  it('reads without colour: risky is hatched, advise-against is crossed, allowed is plain, and what is not settled is pale', () => {
    const year = years.get(name)!;
    const svg = draw(year);
    const drawn = bars(svg);
    const runs = year.operations.flatMap((operation) => operation.runs);
    runs.forEach((run, i) => {
      const [plain, over] = drawn[i]!.children.slice(1);
      expect(drawn[i]!.children[0]!.text).toContain(wording(`year.legend.${run.verdict}`));
      expect(plain!.attributes['fill-opacity'] === undefined, 'solid where settled').toBe(run.settled);
      expect(over?.attributes['fill']).toBe(!run.settled || run.verdict === 'allowed' ? undefined : run.verdict === 'risky' ? 'url(#slant)' : 'url(#cross)');
    });
    const patterns = named(svg, 'pattern').map((pattern) => pattern.attributes['id']);
    for (const { attributes } of named(svg, 'rect')) {
      const used = /^url\(#(.+)\)$/.exec(attributes['fill'] ?? '')?.[1];
      if (used !== undefined) expect(patterns).toContain(used);
    }
  });
});

/** Lightness of a colour, 0 to 1 (relative luminance, WCAG 2.2). */
const luminance = (hex: string): number => {
  const [r, g, b] = [1, 3, 5].map((i) => parseInt(hex.slice(i, i + 2), 16) / 255).map((c) => (c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4)) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};

/** An invented year, with text that XML would choke on. */
const invented = (change: Partial<Year> = {}): Year => ({
  schema: 'year/1', species: 'acer-palmatum', label: 'A <maple> & "friend"', from: '2026-01-01', to: '2026-12-31', phases: [{ phase: 'dormant', label: 'dormant', from: '2026-01-01', to: '2026-12-31', plusMinusDays: 9 }],
  frost: { reliable: false }, daylengthH: [], notices: [], where: { id: 'where.station', params: {}, text: 'Tom & <Jerry> "station"' },
  operations: [{ op: 'repot', operation: { op: 'repot' }, label: 'Repot <deep> & often', runs: [{ from: '2026-01-01', to: '2026-12-31', verdict: 'risky', settled: true, because: { id: 'repot/x.title', params: {}, text: 'roots < leaves & "more"' } }] }],
  ...change,
});

describe('a picture of an invented year', () => {
  it('escapes whatever text it is given', () => {
    const svg = draw(invented());
    expect(svg.children[0]!.text).toContain('A <maple> & "friend"');
    const texts = all(svg).map((element) => element.text).join('\n');
    for (const text of ['Tom & <Jerry> "station"', 'Repot <deep> & often', 'roots < leaves & "more"']) expect(texts).toContain(text);
  });

  it('escapes what stands in an attribute too', () => {
    expect(readXml(element('rect', { 'data-of': 'a < b & "c"' })).attributes['data-of']).toBe('a < b & "c"');
  });

  it('draws a run of 365 days over the full width of the days, and its phase too', () => {
    const svg = draw(invented());
    const [bar] = bars(svg);
    expect(bar!.children[1]!.attributes).toMatchObject({ x: String(daysFrom), width: String(daysTo - daysFrom) });
    const phase = named(svg, 'rect').find(({ attributes }) => attributes['height'] === '18');
    expect(phase!.attributes).toMatchObject({ x: String(daysFrom), width: String(daysTo - daysFrom) });
  });

  it('draws a run of one day at the place of its day', () => {
    const one = (iso: string, verdict: 'risky' | 'allowed') => ({ from: iso, to: iso, verdict, settled: true }) as const;
    const [operation] = invented().operations;
    const day = '2026-07-01';
    const svg = draw(invented({ operations: [{ ...operation!, runs: [{ ...one(day, 'risky') }] }] }));
    const { x, width } = bars(svg)[0]!.children[1]!.attributes;
    const perDay = (daysTo - daysFrom) / 365;
    expect(Number(x)).toBeCloseTo(daysFrom + (dayOf(day) - dayOf('2026-01-01')) * perDay, 1);
    expect(Number(width)).toBeCloseTo(perDay, 0);
    expect(isoOf(dayOf(day))).toBe(day);
  });

  it('tells the three verdicts apart by lightness alone, each lighter one by a contrast of 1.3 at least', () => {
    const [operation] = invented().operations;
    const runs = verdicts.map((verdict, i) => ({ from: `2026-0${i + 1}-01`, to: `2026-0${i + 1}-20`, verdict, settled: true }));
    const fills = bars(draw(invented({ operations: [{ ...operation!, runs }] }))).map((bar) => luminance(bar.children[1]!.attributes['fill']!));
    expect(fills).toEqual(fills.toSorted((a, b) => b - a));
    fills.slice(1).forEach((fill, i) => expect((fills[i]! + 0.05) / (fill + 0.05)).toBeGreaterThan(1.3));
  });

  it('shows the frosts where they can be relied on, and says so where they cannot', () => {
    const texts = (svg: Element): readonly string[] => named(svg, 'text').map((text) => text.text);
    expect(texts(draw(invented()))).toContain(wording('year.frost.none'));
    const frosty = draw(invented({ frost: { reliable: true, last: '2026-04-20', first: '2026-10-28' } }));
    expect(texts(frosty)).toEqual(expect.arrayContaining([wording('year.frost.last', { date: '20 Apr' }), wording('year.frost.first', { date: '28 Oct' })]));
    const allYear = texts(draw(invented({ frost: { reliable: true } })));
    expect(allYear).not.toContain(wording('year.frost.none'));
  });
});

describe('the reader of these tests', () => {
  it('refuses what is not well-formed', () => {
    for (const xml of ['<a><b></a></b>', '<a>', '<a/><b/>', '<a x=1/>', '<a x="1" x="2"/>', '<a>1 & 2</a>', '<a x="<"/>', '<a>></a>', 'text<a/>', '</a>']) expect(() => readXml(xml), xml).toThrow();
    expect(readXml('<a x="1 &amp; 2"><b/>&lt;</a>')).toMatchObject({ name: 'a', attributes: { x: '1 & 2' }, text: '<' });
  });
});

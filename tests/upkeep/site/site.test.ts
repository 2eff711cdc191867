import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import type { WrittenCondition } from '../../../src/knowledge/knowledge.js';
import { brokenLinks } from '../../../src/upkeep/site/brokenLinks.js';
import { conditionText } from '../../../src/upkeep/site/conditionText.js';
import { errorTexts } from '../../../src/upkeep/site/errorPage.js';
import { html } from '../../../src/upkeep/site/html.js';
import { laidOut } from '../../../src/upkeep/site/page.js';
import { sampleYears } from '../../../src/upkeep/site/sampleYears.js';
import { sitePages, yearPath } from '../../../src/upkeep/site/sitePages.js';
import { advisor, root, shipped } from '../../shipped.js';

/* All pages, with the pictures of two species only: a year costs most of the time. */
const pictured = ['acer-buergerianum', 'ficus-microcarpa'];
const years = await sampleYears(advisor, ({ id }) => pictured.includes(id));
const markdown = new Map(['docs/guides', 'docs'].flatMap((folder) => readdirSync(`${root}${folder}`).filter((name) => name.endsWith('.md')).map((name): [string, string] => [`${folder}/${name}`, readFileSync(`${root}${folder}/${name}`, 'utf8')])));
const pages = await sitePages(advisor, markdown, years);
/** What stands beside the pages, and is no text of ours to look at here. */
const beside = ['site.css', 'icon.svg', 'search.js', 'live/live.js', 'live/live.css'];
const files = new Map([...pages.map((page): [string, string] => [page.path, laidOut(page)]), ...pictured.map((id): [string, string] => [yearPath(id), '']), ...beside.map((path): [string, string] => [path, ''])]);

describe('the pages', () => {
  it('are one for each species, rule, fact, operation and error code, and each Markdown page', () => {
    expect(files.size).toBe(pages.length + pictured.length + beside.length);
    for (const id of Object.keys(shipped.species)) expect(files.has(`species/${id}.html`), id).toBe(true);
    for (const id of Object.keys(shipped.rules)) expect(files.has(`rules/${id}.html`), id).toBe(true);
    for (const id of Object.keys(shipped.facts)) expect(files.has(`facts/${id}.html`), id).toBe(true);
    for (const id of Object.keys(shipped.operations)) expect(files.has(`operations/${id}.html`), id).toBe(true);
    for (const code of Object.keys(errorTexts)) expect(files.has(`errors/${code}.html`), code).toBe(true);
    expect(markdown.size).toBeGreaterThanOrEqual(8);
  });

  it('link to nothing that there is not', () => expect(brokenLinks(files)).toEqual([]));

  it('hold no script or style of their own, so that a strict content policy lets them be', () => {
    for (const [path, text] of files) {
      expect(text, path).not.toMatch(/<script(?![^>]*src=)|<style| style="| on[a-z]+="/);
      expect(text, path).not.toMatch(/undefined|\[object |NaN/);
    }
  });

  it('show each trait with its value, its level and its source, and the year as a picture with a text alternative', () => {
    const page = files.get('species/acer-buergerianum.html')!;
    for (const [name, { sources, level }] of Object.entries(shipped.species['acer-buergerianum']!.traits)) {
      expect(page).toContain(`facts/species.${name}.html`);
      for (const id of sources) expect(page).toContain(`sources/index.html#${id}`);
      if (level !== 'acer-buergerianum') expect(page).toContain(`species/${level}.html`);
    }
    expect(page).toMatch(/<img src="\.\.\/species\/year\/acer-buergerianum\.svg" width="800" alt="Phases, frost[^"]+2027-01-01/);
  });

  it('tell the year in words too, each stretch with the rule that speaks loudest', () => {
    const page = files.get('species/acer-buergerianum.html')!;
    for (const { label, runs } of years.get('acer-buergerianum')!.operations) {
      const row = page.split(/<\/?tr>/).find((each) => each.includes(`>${html`${label}`.html}</a></th>`))!;
      expect(row.match(/<li>/g), label).toHaveLength(runs.length);
      for (const { because } of runs) if (because !== undefined) expect(row).toContain(`rules/${because.id.replace('.title', '.html')}`);
    }
  });

  it('warn of what the tree itself can do, at its species, and of what the work can do, at the operation', () => {
    const { wording } = shipped;
    const yew = files.get('species/taxus-baccata.html')!;
    for (const id of ['dust', 'poison-people', 'poison-pets', 'poison-livestock']) expect(yew).toContain(html`${wording[`caution.${id}`]!}`.html);
    for (const id of ['thorns', 'poison-not-recorded', 'blades']) expect(yew).not.toContain(html`${wording[`caution.${id}`]!}`.html);
    expect(files.get('species/crataegus-monogyna.html')!).toContain(html`${wording['caution.thorns']!}`.html);
    for (const [id, { operations }] of Object.entries(shipped.cautions)) {
      for (const op of operations === 'all' ? Object.keys(shipped.operations) : operations) expect(files.get(`operations/${op}.html`)!, `${op}: ${id}`).toContain(html`<li>${wording[`caution.${id}`]!}`.html);
    }
  });

  it('show of each rule why, when, unless and every example', () => {
    for (const rule of Object.values(shipped.rules)) {
      const page = files.get(`rules/${rule.id}.html`)!;
      expect(page, rule.id).toContain('<h2>Why</h2>');
      expect(page.match(/<td>(certainly|possibly|never)<\/td>/g)!.length, rule.id).toBe(rule.examples.length);
      expect(page.includes('<h2>Unless</h2>'), rule.id).toBe(rule.unless.length > 0);
      expect(/<h2>Why<\/h2>\n<p>(.*)<\/p>/.exec(page)![1], rule.id).not.toMatch(/[{}]/);
    }
  });
});

describe('a link', () => {
  it('is found broken where the page or the place in it is not there', () => {
    const two = new Map([['a.html', '<p id="here"></p><a href="b/c.html#there">x</a><a href="#here">x</a>'], ['b/c.html', '<a href="../a.html#gone">x</a><img src="no.svg">']]);
    expect(brokenLinks(two)).toEqual(['a.html: b/c.html#there', 'b/c.html: ../a.html#gone', 'b/c.html: no.svg']);
  });
});

describe('a condition', () => {
  const said = (condition: WrittenCondition): string => conditionText(condition, shipped).html.replaceAll(/<[^>]+>/g, '');

  it('is told in plain words, shares in per cent, with its unit', () => {
    expect(said({ 'roots.shareRemoved': { above: 0.125 } })).toBe('roots taken: above 12.5 %');
    expect(said({ 'season.phase': ['bud-swell', 'dormant'] })).toBe('phase: buds swelling or dormant');
    expect(said({ 'season.nightC': { atLeast: -5, atMost: 3 } })).toBe('usual night: at least -5 °C and at most 3 °C');
    expect(said({ 'season.nightC': { between: [-5, 3] } })).toBe('usual night: from -5 °C to 3 °C');
    expect(said({ 'cut.foliageLeft': false })).toMatch(/: no$/);
    expect(said({ 'disease.inSeason': { not: { has: 'oak-wilt' } } })).toMatch(/: not with oak wilt among them$/);
  });

  it('names the trait that it compares with, and leads to its page', () => {
    expect(said({ 'exposure.lowestC': { below: { trait: 'roots.killC', plus: 3 } } })).toBe('lowest it will meet: below its temperature that kills roots in a pot plus 3 °C');
    expect(said({ 'exposure.lowestC': { below: { trait: 'roots.killC', plus: -3 } } })).toMatch(/less 3 °C$/);
    const { html: text } = conditionText({ 'roots.shareRemoved': { above: { trait: 'roots.maxRemoved', times: 1.5 } } }, shipped);
    expect(text).toContain('above 1.5 times its <a href="~/facts/species.roots.maxRemoved.html">');
    expect(said({ 'season.rootDaysLeft': { below: { operation: 'daysNeeded' } } })).toMatch(/below the days that the work needs after it$/);
  });
});

describe('colours', () => {
  /* Relative luminance and contrast: WCAG 2.1, https://www.w3.org/TR/WCAG21/#dfn-contrast-ratio, recalled. */
  const luminance = (colour: string): number => {
    const [r, g, b] = [1, 3, 5].map((at) => Number.parseInt(colour.slice(at, at + 2), 16) / 255).map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4)) as [number, number, number];
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const contrast = (one: string, other: string): number => {
    const [dark, light] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
    return (light + 0.05) / (dark + 0.05);
  };
  const schemes = [...readFileSync(`${root}src/upkeep/site/site.css`, 'utf8').matchAll(/:root \{[^}]*--paper[^}]*\}/g)].map(([rule]) => Object.fromEntries([...rule.matchAll(/--(\w+): (#\w{6})/g)].map((match) => [match[1]!, match[2]!])));

  it('stand out from the paper at least 4.5 to 1, by day and by night', () => {
    expect(contrast('#000000', '#ffffff')).toBeCloseTo(21, 5);
    expect(schemes).toHaveLength(2);
    for (const scheme of schemes) {
      for (const ink of ['ink', 'soft', 'moss', 'allowed', 'risky', 'against']) for (const ground of ['paper', 'band']) expect(contrast(scheme[ink]!, scheme[ground]!), `${ink} ${scheme[ink]!} on ${ground}`).toBeGreaterThanOrEqual(4.5);
    }
  });
});

describe('text', () => {
  it('is escaped wherever it is put into a page', () => {
    expect(html`<b title="${'"><script>'}">${['<i>', html`<i>`]}${'&'}${undefined}${3}</b>`.html).toBe('<b title="&quot;&gt;&lt;script&gt;">&lt;i&gt;<i>&amp;3</b>');
  });
});

import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { brokenLinks } from '../../../src/upkeep/site/brokenLinks.js';
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
const pages = sitePages(advisor, markdown, years);
const files = new Map([...pages.map((page): [string, string] => [page.path, laidOut(page)]), ...pictured.map((id): [string, string] => [yearPath(id), '']), ['site.css', ''], ['icon.svg', ''], ['search.js', '']]);

describe('the pages', () => {
  it('are one for each species, rule, fact, operation and error code, and each Markdown page', () => {
    expect(files.size).toBe(pages.length + pictured.length + 3);
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

describe('text', () => {
  it('is escaped wherever it is put into a page', () => {
    expect(html`<b title="${'"><script>'}">${['<i>', html`<i>`]}${'&'}${undefined}${3}</b>`.html).toBe('<b title="&quot;&gt;&lt;script&gt;">&lt;i&gt;<i>&amp;3</b>');
  });
});

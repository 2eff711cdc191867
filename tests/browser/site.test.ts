import { readFileSync } from 'node:fs';
import { chromium } from 'playwright-core';
import { expect, test } from 'vitest';
import { laidOut } from '../../src/upkeep/site/page.js';
import { searchEntries, searchScript } from '../../src/upkeep/site/searchFiles.js';
import { sitePages } from '../../src/upkeep/site/sitePages.js';
import { advisor, root } from '../shipped.js';
import { chromiumPath } from './chromium.js';
import { served } from './served.js';

test.skipIf(chromiumPath === undefined)('a species is found by its common name, by keyboard, on a page of any depth, under a strict content policy', async () => {
  const pages = await sitePages(advisor, new Map(), new Map());
  const files = new Map(pages.map((page): [string, string] => [page.path, laidOut(page)]));
  for (const name of ['site.css', 'icon.svg']) files.set(name, readFileSync(`${root}src/upkeep/site/${name}`, 'utf8'));
  files.set('search.js', await searchScript()).set('search.json', searchEntries(pages));
  const { address, stop } = await served(files);
  const browser = await chromium.launch({ executablePath: chromiumPath!, args: ['--no-sandbox'] });
  try {
    for (const [from, width] of [['index.html', 1400], ['rules/wound/girth-half.html', 360]] as const) {
      const page = await browser.newPage({ viewport: { width, height: 800 } });
      const faults: string[] = [];
      page.on('console', (message) => { if (message.type() === 'error') faults.push(message.text()); });
      page.on('pageerror', (error) => { faults.push(error.message); });
      await page.goto(address + from);
      await page.getByLabel('Search').focus();
      await page.keyboard.type('trident mapel');
      await page.locator('#found li a').first().waitFor();
      expect(await page.locator('#found li a').first().textContent()).toMatch(/^trident maple, Acer buergerianum/);
      await page.keyboard.press('Enter');
      await page.waitForURL(/species\/acer-buergerianum\.html$/);
      expect(await page.locator('h1').textContent()).toMatch(/Acer buergerianum/);
      expect(await page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth'), `${from} at ${width}`).toBeLessThanOrEqual(0);
      expect(faults).toEqual([]);
      await page.close();
    }
  } finally {
    await browser.close();
    stop();
  }
}, 120_000);

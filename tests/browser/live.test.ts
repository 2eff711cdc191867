import { readFileSync } from 'node:fs';
import axe from 'axe-core';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { liveFiles } from '../../src/upkeep/site/live/liveFiles.js';
import { livePage } from '../../src/upkeep/site/live/livePage.js';
import { laidOut } from '../../src/upkeep/site/page.js';
import { advisor, root } from '../shipped.js';
import { chromiumPath } from './chromium.js';
import { served } from './served.js';

const pine = 'tree.species=Scots+pine&operation.op=cut-back&date=2026-04-10&where.place=koeln-cologne-germany';

describe.skipIf(chromiumPath === undefined)('on the live page', () => {
  let browser: Browser;
  let site: Awaited<ReturnType<typeof served>>;
  beforeAll(async () => {
    const files = new Map([['live/index.html', laidOut(livePage)], ...(await liveFiles(root)), ['search.js', '']]);
    for (const name of ['site.css', 'icon.svg']) files.set(name, readFileSync(`${root}src/upkeep/site/${name}`, 'utf8'));
    site = await served(files);
    browser = await chromium.launch({ executablePath: chromiumPath!, args: ['--no-sandbox'] });
  }, 60_000);
  afterAll(async () => {
    await browser.close();
    site.stop();
  });

  /** Opens the page with a link; what goes wrong on it, and what it asks of others than its server, is kept. */
  const opened = async (link: string, options: Parameters<Browser['newPage']>[0] = {}): Promise<{ readonly page: Page; readonly faults: string[] }> => {
    const page = await browser.newPage(options);
    const faults: string[] = [];
    page.on('console', (message) => { if (message.type() === 'error') faults.push(message.text()); });
    page.on('pageerror', (error) => { faults.push(error.message); });
    page.on('request', (request) => { if (!request.url().startsWith(site.address)) faults.push(request.url()); });
    await page.goto(`${site.address}live/index.html#${link}`);
    await page.locator('#at-tree-species').waitFor();
    return { page, faults };
  };
  const verdict = async (page: Page): Promise<string> => (await page.locator('#verdict > .verdict').textContent()) ?? '';

  it('the keyboard alone leads from an empty form to a verdict, and an answer that is pressed holds what it said', async () => {
    const { page, faults } = await opened('');
    const to = async (id: string): Promise<void> => {
      for (let i = 0; i < 60 && (await page.evaluate('document.activeElement.id')) !== id; i++) await page.keyboard.press('Tab');
      expect(await page.evaluate('document.activeElement.id')).toBe(id);
    };
    await to('at-tree-species');
    await page.keyboard.type('Scots pine');
    await to('at-operation-op');
    await page.keyboard.type('cut back');
    await page.locator('#verdict.risky').waitFor();
    const key = 'cut.foliageLeft=false';
    for (let i = 0; i < 80 && (await page.evaluate('document.activeElement.dataset.key')) !== key; i++) await page.keyboard.press('Tab');
    expect(await page.locator(`button[data-key="${key}"]:focus .verdict`).textContent()).toBe('advise against');
    await page.keyboard.press('Enter');
    await page.locator('#verdict.advise-against').waitFor();
    await page.waitForFunction("document.activeElement.id === 'verdict'");
    expect(await page.locator('#at-operation-foliageLeft').inputValue()).toBe('false');
    expect(faults).toEqual([]);
    await page.close();
  }, 60_000);

  it('a link opened again shows the same question and the answer that the package gives, with the year, and nothing is asked of another server', async () => {
    const { page, faults } = await opened(pine);
    await page.locator('#year svg').waitFor();
    const assessed = await advisor.assess({ tree: { species: 'Scots pine' }, operation: { op: 'cut-back' }, date: '2026-04-10', where: { place: 'koeln-cologne-germany' } });
    expect(await verdict(page)).toBe(assessed.verdict);
    expect(await page.locator('#verdict .summary').textContent()).toContain(assessed.summary.text);
    expect(await page.locator('.finding').count()).toBe(assessed.findings.length);
    await page.locator('button', { hasText: 'leaving green below the cut' }).first().click();
    await page.locator('#verdict.allowed').waitFor();
    const again = await opened(new URL(page.url()).hash.slice(1));
    await again.page.locator('#verdict.allowed').waitFor();
    expect(await again.page.locator('#at-operation-foliageLeft').inputValue()).toBe('true');
    expect([...faults, ...again.faults]).toEqual([]);
    process.stdout.write(`live page: first answer ${Math.round(Number(await again.page.evaluate('document.documentElement.dataset.answeredMs')))} ms after the page was asked for\n`);
    await page.close();
    await again.page.close();
  }, 60_000);

  it('a broken link says so and takes nothing away', async () => {
    const { page } = await opened(pine);
    await page.locator('#verdict.risky').waitFor();
    await page.evaluate("location.hash = '#tree.species=%E0%A4%A'");
    await page.locator('#link-fault', { hasText: 'cannot be read' }).waitFor();
    expect(await page.locator('#at-tree-species').inputValue()).toBe('Scots pine');
    await page.locator('#verdict.risky').waitFor();
    const fresh = await opened('nonsense');
    await fresh.page.locator('#link-fault', { hasText: '`nonsense` names nothing' }).waitFor();
    await page.close();
    await fresh.page.close();
  }, 60_000);

  it('a mistake stands beside its field, and a near name puts it right', async () => {
    const { page } = await opened('tree.species=trident+mapel&operation.op=repot');
    await page.locator('#at-tree-species-fault', { hasText: 'Unknown species' }).waitFor();
    expect(await page.locator('#at-tree-species').getAttribute('aria-invalid')).toBe('true');
    await page.locator('#near button', { hasText: 'trident maple' }).click();
    await page.locator('#verdict > .verdict').waitFor();
    expect(await page.evaluate('document.activeElement.id')).toBe('at-tree-species');
    expect(await page.locator('#at-tree-species').getAttribute('aria-invalid')).toBeNull();
    const roots = page.locator('#at-operation-rootsRemoved');
    await roots.fill('400');
    await roots.blur();
    await page.locator('#at-operation-rootsRemoved-fault', { hasText: 'From 0 to 100 %.' }).waitFor();
    await roots.fill('30');
    await roots.blur();
    await page.locator('#verdict > .verdict').waitFor();
    expect(new URL(page.url()).hash).toContain('operation.rootsRemoved=0.3');
    await page.close();
  }, 60_000);

  for (const width of [360, 1400]) {
    for (const colorScheme of ['light', 'dark'] as const) {
      it(`nothing bars those who read it otherwise, at ${width} px in ${colorScheme}, and it is no wider than the window`, async () => {
        const { page, faults } = await opened(pine, { viewport: { width, height: 900 }, colorScheme });
        await page.locator('#year svg').waitFor();
        await page.locator('#sample-tree > summary').click();
        await page.locator('#sample svg').waitFor();
        for (const summary of await page.locator('details:not([open]) > summary').all()) await summary.evaluate('(element) => { element.parentElement.open = true; }');
        await page.evaluate(axe.source);
        const { violations } = (await page.evaluate('axe.run()')) as { readonly violations: readonly { readonly id: string; readonly nodes: readonly { readonly html: string }[] }[] };
        expect(violations.map(({ id, nodes }) => `${id}: ${nodes[0]!.html}`)).toEqual([]);
        expect(await page.evaluate('document.documentElement.scrollWidth - document.documentElement.clientWidth')).toBeLessThanOrEqual(0);
        expect(faults).toEqual([]);
        await page.close();
      }, 60_000);
    }
  }
});

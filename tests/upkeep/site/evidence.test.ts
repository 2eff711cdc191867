import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { evidencePage } from '../../../src/upkeep/site/evidencePage.js';
import { kept } from '../../outside/agreement.js';
import { root, shipped } from '../../shipped.js';

const page = evidencePage(shipped, kept);

test('the page of evidence is up to date', async () => await expect(page).toMatchFileSnapshot(fileURLToPath(new URL(`file://${root}docs/evidence.md`))));

test('its shares come to the whole, and every disagreement stands on it with a reason', () => {
  for (const table of page.split('\n\n').filter((part) => part.startsWith('| ') && part.includes('| share |'))) {
    const shares = [...table.matchAll(/([\d.]+) % \|$/gm)].map((match) => Number(match[1]));
    expect(shares.reduce((sum, share) => sum + share, 0), table).toBeCloseTo(100, 0);
  }
  for (const { table, id, kind, reason } of kept) expect(page).toContain(`| ${table} | ${id} | ${kind} | ${reason.replaceAll('|', '\\|')} |`);
  expect(page).not.toMatch(/undefined|NaN|\[object/);
});

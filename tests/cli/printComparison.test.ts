import { stripVTControlCharacters } from 'node:util';
import { expect, test } from 'vitest';
import type { Units } from '../../src/cli/page/inUnits.js';
import { printComparison } from '../../src/cli/printComparison.js';
import { advisor, shipped } from '../shipped.js';

const branch = { tree: { species: 'trident maple', trunk: { diameterMm: 60 } }, operation: { op: 'remove-branch', finish: 'flush', branchDiameterMm: 22 }, date: '2026-11-15', where: { place: 'koeln-cologne-germany' } };
const ways = [{ date: '2027-03-15' }, { operation: { finish: 'stub' } }, { operation: { nodesLeft: 2 } }, { date: '2027-06-10', operation: { finish: 'concave', foliageShare: 0.05 } }];
const printed = async (width: number, units: Units = 'metric'): Promise<readonly string[]> => stripVTControlCharacters(printComparison(await advisor.compare(branch, ways), shipped, { width, units })).trimEnd().split('\n');

test.each([80, 100])('a comparison keeps within %d columns', async (width) => {
  for (const line of await printed(width)) expect(line.length, line).toBeLessThanOrEqual(width);
});

test('a comparison is a table of verdicts and years, with the best marked and named, and a way that cannot be answered named too', async () => {
  const comparison = await advisor.compare(branch, ways);
  const lines = await printed(100);
  const text = lines.join('\n');
  expect(lines[0]).toMatch(/^ {2}way +verdict +closes, years +dies back/);
  for (const { label, issues } of comparison.variants) {
    expect(text).toContain(`${comparison.best.includes(label) ? '* ' : '  '}${label}`);
    if (issues !== undefined) expect(text).toContain(issues[0]!.message);
  }
  for (const id of comparison.variants.flatMap(({ findingsAdded }) => findingsAdded)) expect(text).toContain(`+ ${shipped.rules[id]!.title} (${id})`);
  for (const id of comparison.variants.flatMap(({ findingsGone }) => findingsGone)) expect(text).toContain(`- ${shipped.rules[id]!.title} (${id})`);
  expect(text.replace(/\s+/g, ' ')).toContain(`${comparison.best.length === 1 ? 'Best' : 'Tied for best'}: ${comparison.best.join('; ')}. ${comparison.why.text}`);
});

test('a comparison tells how far wood dies back in the units asked for', async () => {
  expect((await printed(100)).join('\n')).toMatch(/\d–\d+ mm/);
  const imperial = (await printed(100, 'imperial')).join('\n');
  expect(imperial).toMatch(/\d\/\d+ in/);
  expect(imperial).not.toMatch(/\d mm/);
});

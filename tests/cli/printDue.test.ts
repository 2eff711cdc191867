import { stripVTControlCharacters } from 'node:util';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import { printDue } from '../../src/cli/printDue.js';
import { advisor, root, shipped } from '../shipped.js';

const demo: unknown = parse(readFileSync(`${root}docs/demo/collection.yaml`, 'utf8'));

test.each(['2026-11-25', '2027-03-20', '2027-06-20'])('the list of %s keeps within 80 columns, and says each piece of work, its days and why without colour', async (date) => {
  const due = await advisor.due(demo, date);
  const lines = stripVTControlCharacters(printDue(due, shipped, { width: 80, units: 'metric' })).split('\n');
  for (const line of lines) expect(line.length, line).toBeLessThanOrEqual(80);
  const text = lines.join(' ').replace(/\s+/g, ' ');
  for (const { tree, operation, window, why } of due.items) {
    expect(text).toContain(`${tree}: ${shipped.operations[operation.op]!.label}`);
    expect(text).toContain(`, ${window.from} to `);
    expect(text).toContain(why.text);
  }
});

test('overdue stands before open, open before soon, and the lines of one tree stand together', async () => {
  const due = await advisor.due(demo, '2027-02-20');
  const lines = stripVTControlCharacters(printDue(due, shipped, { width: 80, units: 'metric' })).split('\n');
  expect(lines.filter((line) => /^[A-Z]/.test(line)).map((line) => line.replace(/ \(\d+\)$/, ''))).toEqual(['Overdue', 'Open now', 'Soon']);
  const hawthorn = lines.flatMap((line, i) => (line.startsWith('o hawthorn:') ? [i] : []));
  expect(hawthorn).toHaveLength(2);
  expect(lines.slice(hawthorn[0]! + 1, hawthorn[1]).filter((line) => line.startsWith('o '))).toEqual([]);
});

test('an empty list says so', async () => {
  const due = await advisor.due({ where: { place: 'malmo-sweden' }, trees: [{ id: 'it', tree: { species: 'acer', lastRepotted: '2027-03' } }] }, '2027-07-20');
  expect(printDue(due, shipped, { width: 80, units: 'metric' })).toBe('Nothing is due on 2027-07-20.\n');
});

test('what is not told of some trees stands at the end, for all of them in one line', async () => {
  const due = await advisor.due({ where: { place: 'malmo-sweden' }, trees: ['b', 'a'].map((id) => ({ id, tree: { species: 'acer' } })) }, '2027-07-20');
  expect(printDue(due, shipped, { width: 80, units: 'metric' })).toBe('Nothing is due on 2027-07-20.\n\ni a, b: When it was last repotted is not told, so that no repotting is listed.\n');
});

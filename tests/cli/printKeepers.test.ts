import { readFileSync } from 'node:fs';
import { stripVTControlCharacters } from 'node:util';
import { beforeAll, expect, it } from 'vitest';
import { parse } from 'yaml';
import type { Keepers } from '../../src/advice/keepers/keepers.js';
import { printKeepers } from '../../src/cli/printKeepers.js';
import { advisor, root, shipped } from '../shipped.js';

let keepers: Keepers;
let text: string;
beforeAll(async () => {
  keepers = await advisor.keepers(parse(readFileSync(`${root}docs/demo/keepers-twin.yaml`, 'utf8')));
  text = stripVTControlCharacters(printKeepers(keepers, shipped, { width: 200, units: 'metric' }));
}, 60_000);

it('prints what is kept and taken, on which day, and why each goes', () => {
  const [best] = keepers.sets;
  expect(text).toContain(`keep    ${best!.keep.join(', ')}\n`);
  expect(text).toContain(`take    ${best!.remove.join(', ')}\n`);
  for (const { date } of best!.stages) expect(text).toContain(date);
  expect(text).toMatch(/\n {2}inner +between the trunks, toward the other trunk \(1\.50\); a bar across the trunk with first-left/);
});

it('prints each term once with the sum of its parts, and these add up to the cost', () => {
  const charged = text.split('What this costs: ')[1]!.split('\n\n')[0]!;
  const sums = [...charged.matchAll(/^ {2}(\d+\.\d\d) {2}/gm)].map(([, sum]) => Number(sum));
  expect(sums).toEqual(sums.toSorted((a, b) => b - a));
  expect(sums.reduce((all, sum) => all + sum, 0)).toBeCloseTo(keepers.sets[0]!.cost, 1);
});

it('prints the sets that are about as good, and what keeping a favourite costs', () => {
  for (const { dearerBy, why } of keepers.ties) expect(text).toContain(`+${dearerBy.toFixed(2)}  ${why.text}`);
  expect(text).toContain('You keep to-front');
});

it('stays within the width of a narrow terminal', () => {
  for (const line of stripVTControlCharacters(printKeepers(keepers, shipped, { width: 60, units: 'metric' })).split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
});

import { readFileSync } from 'node:fs';
import { stripVTControlCharacters } from 'node:util';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { printPlan } from '../../src/cli/printPlan.js';
import { advisor, root, shipped } from '../shipped.js';

const demo = parse(readFileSync(`${root}docs/demo/plan-shrub.yaml`, 'utf8')) as { readonly steps: readonly { readonly date: string }[] };
const hasty = { ...demo, steps: demo.steps.map((step) => (step.date === '2027-03-12' ? { ...step, date: '2026-07-11' } : step)) };

const printed = async (question: unknown): Promise<string> => stripVTControlCharacters(printPlan(await advisor.plan(question), shipped, { width: 80, units: 'metric' }));

describe('a plan on the terminal', () => {
  test('keeps to 80 columns', async () => {
    for (const question of [demo, hasty]) for (const line of (await printed(question)).split('\n')) expect(line.length, line).toBeLessThanOrEqual(80);
  });

  test('tells each sitting, its work by branch, what it takes and what is owed', async () => {
    const text = await printed(demo);
    for (const { date } of demo.steps) expect(text).toContain(`${date}  `);
    expect(text).toContain('remove a branch (low-left)');
    expect(text).toMatch(/roots 35 %; strain: a hard job \(4\) on 0\.\d still owed, 4\.\d together/);
    expect(text).toMatch(/Strain at its most: 4\.\d on 2027-03-12/);
    expect(text).toMatch(/last repotted\s2027-03-12/);
  });

  test('says what speaks against it, where, and what would be better', async () => {
    const text = (await printed(hasty)).replace(/\s+/g, ' ');
    expect(text).toMatch(/^x ADVISE AGAINST 2026-07-11, /);
    expect(text).toMatch(/Better - .*(allowed|risky)/);
  });
});

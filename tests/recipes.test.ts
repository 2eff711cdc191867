import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withOutputs } from '../src/upkeep/consoleBlocks.js';
import { runShell } from '../src/upkeep/runShell.js';
import { root } from './shipped.js';

const hasJq = (): boolean => {
  try {
    execFileSync('jq', ['--version']);
    return true;
  } catch {
    process.stdout.write('recipes not run: no jq on this machine (Debian: apt-get install jq)\n');
    return false;
  }
};

test.skipIf(!hasJq())('each recipe for the shell prints what stands under it', () => {
  const recipes = readFileSync(`${root}docs/recipes.md`, 'utf8');
  expect(recipes.match(/```console/g)!.length).toBeGreaterThanOrEqual(10);
  expect(withOutputs(recipes, runShell(root))).toBe(recipes);
}, 120_000);

test('the page on what stays prints what stands under its example', () => {
  const page = readFileSync(`${root}docs/stability.md`, 'utf8');
  expect(page).toMatch(/```console/);
  expect(withOutputs(page, runShell(root))).toBe(page);
}, 60_000);

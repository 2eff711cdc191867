import { execFileSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { withCodeOutputs } from '../src/upkeep/codeBlocks.js';
import { withOutputs } from '../src/upkeep/consoleBlocks.js';
import { pagesThatRun } from '../src/upkeep/pagesThatRun.js';
import { runCode } from '../src/upkeep/runCode.js';
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

test.skipIf(!hasJq()).each(pagesThatRun)('each block of %s prints what stands under it', (page) => {
  const text = readFileSync(`${root}${page}`, 'utf8');
  expect(text.match(/```(console|js)/g)!.length).toBeGreaterThanOrEqual(page.endsWith('recipes.md') ? 10 : 1);
  expect(text).not.toMatch(/```(console|js|text)\n(\$ .*\n)?```/);
  expect(withCodeOutputs(withOutputs(text, runShell(root)), runCode(root))).toBe(text);
}, 120_000);

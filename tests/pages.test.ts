import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { withCodeOutputs } from '../src/upkeep/codeBlocks.js';
import { withOutputs } from '../src/upkeep/consoleBlocks.js';
import { speciesId } from '../src/upkeep/house/speciesId.js';
import { pagesThatRun } from '../src/upkeep/pagesThatRun.js';
import { runCode } from '../src/upkeep/runCode.js';
import { runShell } from '../src/upkeep/runShell.js';
import { vet } from '../src/upkeep/vet.js';
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

/* Files shown in a guide, as a grower would add them: each is checked as it stands, beside all that it builds on. */
const shownFiles = pagesThatRun.flatMap((page) => [...readFileSync(`${root}${page}`, 'utf8').matchAll(/```yaml\n([\s\S]*?)```/g)].map(([, text]) => [page, text!] as const));

test.each(shownFiles)('the file of a species shown in %s is one that vet takes', async (_, text) => {
  const folder = mkdtempSync(join(tmpdir(), 'shown-'));
  try {
    for (const each of ['species', 'rules', 'shared']) cpSync(`${root}${each}`, join(folder, each), { recursive: true });
    writeFileSync(join(folder, `species/taxa/${speciesId(/^name: (.*)$/m.exec(text)![1]!)}.yaml`), text);
    expect((await vet(folder)).issues).toEqual([]);
  } finally {
    rmSync(folder, { recursive: true });
  }
});

test.each(pagesThatRun)('no block of %s is left unchecked', (page) => {
  const kinds = [...readFileSync(`${root}${page}`, 'utf8').matchAll(/^```(\w*)\n[\s\S]*?^```$/gm)].map((match) => match[1]);
  expect(kinds.filter((kind, i) => !['console', 'js', 'yaml'].includes(kind!) && !(kind === 'text' && kinds[i - 1] === 'js'))).toEqual([]);
});

test.skipIf(!hasJq()).each(pagesThatRun)('each block of %s prints what stands under it', (page) => {
  const text = readFileSync(`${root}${page}`, 'utf8');
  expect(text.match(/```(console|js)/g)!.length).toBeGreaterThanOrEqual(page.endsWith('recipes.md') ? 10 : 1);
  expect(text).not.toMatch(/```(console|js|text)\n(\$ .*\n)?```/);
  expect(withCodeOutputs(withOutputs(text, runShell(root)), runCode(root))).toBe(text);
}, 120_000);

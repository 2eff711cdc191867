import { execFileSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { withOutputs } from '../src/upkeep/consoleBlocks.js';
import { runBuilt } from '../src/upkeep/runBuilt.js';

const root = fileURLToPath(new URL('..', import.meta.url));
const readme = readFileSync(join(root, 'README.md'), 'utf8');

describe('the README', () => {
  it('shows what the command line really prints', () => {
    expect(withOutputs(readme, runBuilt(root))).toBe(readme);
  });

  it('embeds in ten lines that really run', () => {
    const code = /```js\n([\s\S]*?)```/.exec(readme)![1]!;
    const folder = mkdtempSync(join(root, 'dist/readme-'));
    try {
      writeFileSync(join(folder, 'embed.mjs'), code);
      expect(execFileSync('node', [join(folder, 'embed.mjs')], { encoding: 'utf8' })).toMatch(/^advise-against \S/);
    } finally {
      rmSync(folder, { recursive: true });
    }
  });
});

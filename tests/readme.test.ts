import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { withOutputs } from '../src/upkeep/consoleBlocks.js';
import { runBuilt } from '../src/upkeep/runBuilt.js';
import { runCode } from '../src/upkeep/runCode.js';

const root = fileURLToPath(new URL('..', import.meta.url));
const readme = readFileSync(join(root, 'README.md'), 'utf8');

describe('the README', () => {
  it('shows what the command line really prints', () => {
    expect(withOutputs(readme, runBuilt(root))).toBe(readme);
  });

  it('embeds in ten lines that really run', () => {
    const code = /```js\n([\s\S]*?)```/.exec(readme)![1]!;
    expect(runCode(root)(code)).toMatch(/^advise-against \S/);
  });
});

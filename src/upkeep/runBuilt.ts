import { execFileSync } from 'node:child_process';
import { join } from 'node:path';
import type { RunLine } from './consoleBlocks.js';

/** Runs lines that begin with `sparebud` on the built command line; the knowledge's hash is left out, since it changes with every word. */
export const runBuilt = (root: string): RunLine => (line) => {
  const words = [...line.matchAll(/"([^"]*)"|(\S+)/g)].map((match) => match[1] ?? match[2]!);
  const printed = execFileSync('node', [join(root, 'dist/cli/main.js'), ...words.slice(1)], { cwd: root, encoding: 'utf8', env: { ...process.env, NO_COLOR: '1', COLUMNS: '80' } });
  return printed.replace(/;?\s*knowledge\s+\S+\s*$/, '\n');
};

import { execFileSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';

/** Runs a module as an app would that has the built package installed, and hands back what it prints. */
export const runCode = (root: string) => (code: string): string => {
  const folder = mkdtempSync(join(root, 'dist/code-'));
  try {
    writeFileSync(join(folder, 'embed.mjs'), code);
    return execFileSync('node', [join(folder, 'embed.mjs')], { encoding: 'utf8' });
  } finally {
    rmSync(folder, { recursive: true });
  }
};

import { execFileSync } from 'node:child_process';
import { chmodSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { delimiter, join } from 'node:path';
import type { RunLine } from './consoleBlocks.js';

/** Runs lines of shell in the project's folder, or in another, with `sparebud` the built command line. */
export const runShell = (root: string, folder = root): RunLine => (line) => {
  const bin = mkdtempSync(join(tmpdir(), 'sparebud-'));
  try {
    const command = join(bin, 'sparebud');
    writeFileSync(command, `#!/bin/sh\nexec node "${join(root, 'dist/cli/main.js')}" "$@"\n`);
    chmodSync(command, 0o755);
    return execFileSync('sh', ['-c', line], { cwd: folder, encoding: 'utf8', env: { ...process.env, PATH: `${bin}${delimiter}${process.env['PATH'] ?? ''}`, NO_COLOR: '1', COLUMNS: '80' } });
  } finally {
    rmSync(bin, { recursive: true });
  }
};

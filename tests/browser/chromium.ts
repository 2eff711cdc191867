import { execFileSync } from 'node:child_process';

/** Where a chromium is on this machine; undefined, with a printed reason, where there is none. */
export const chromiumPath = ((): string | undefined => {
  for (const name of ['chromium', 'chromium-browser', 'google-chrome']) {
    try {
      return execFileSync('sh', ['-c', `command -v ${name}`], { encoding: 'utf8' }).trim();
    } catch {
      continue;
    }
  }
  process.stdout.write('browser tests not run: no chromium on this machine (Debian: apt-get install chromium)\n');
  return undefined;
})();

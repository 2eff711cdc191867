import { spawnSync } from 'node:child_process';
import { SparebudError } from '../knowledge/error.js';

/**
 * What git prints, line by line.
 *
 * @throws SparebudError in git's own words where it refuses
 */
export const gitLines = (root: string, words: readonly string[], more: { readonly env?: Readonly<Record<string, string>>; readonly input?: string } = {}): readonly string[] => {
  const { status, stdout, stderr, error } = spawnSync('git', words, { cwd: root, encoding: 'utf8', maxBuffer: 1 << 28, env: { ...process.env, ...more.env }, ...(more.input === undefined ? {} : { input: more.input }) });
  if (status === 0) return stdout.split('\n').filter((line) => line !== '');
  const said = (error?.message ?? stderr).trim().split('\n')[0] ?? '';
  throw new SparebudError([{ code: 'impossible', path: words.join(' '), message: `git cannot do \`git ${words.slice(0, 3).join(' ')}\`: ${said}`, help: 'run it in a clone of the repository, with a revision that is there: git fetch brings more' }]);
};

import { gitLines } from '../gitLines.js';

/** Ids of the rules whose files differ from a git revision, new and uncommitted ones among them. */
export const changedRules = (root: string, rev: string): readonly string[] =>
  [...gitLines(root, ['diff', '--name-only', '--relative', rev, '--', 'rules']), ...gitLines(root, ['ls-files', '--others', '--exclude-standard', '--', 'rules'])]
    .filter((path) => /\.ya?ml$/.test(path))
    .map((path) => path.replace(/^rules\//, '').replace(/\.ya?ml$/, ''));

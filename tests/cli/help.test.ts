import { execFileSync, spawnSync } from 'node:child_process';
import { cpSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { runShell } from '../../src/upkeep/runShell.js';
import { root } from '../shipped.js';

const helpOf = (words: readonly string[]): string => execFileSync(process.execPath, [`${root}dist/cli/main.js`, ...words, '--help'], { encoding: 'utf8' });

/** The commands that a help text lists, but for `help` itself. */
const listed = (help: string): readonly string[] => [...(help.split('\nCommands:\n')[1] ?? '').split('\n\n')[0]!.matchAll(/^ {2}(\S+)/gm)].map(([, name]) => name!).filter((name) => name !== 'help');

interface Help {
  readonly words: readonly string[];
  readonly text: string;
}

const helps = (words: readonly string[]): readonly Help[] => {
  const text = helpOf(words);
  return [{ words, text }, ...listed(text).flatMap((name) => helps([...words, name]))];
};

const all = helps([]);

/* What the examples name: the folders that maintainers work in, as a clone has them. */
const folder = mkdtempSync(join(tmpdir(), 'help-'));
for (const each of ['species', 'rules', 'shared', 'tests/corpus.yaml', 'tests/cases']) cpSync(`${root}${each}`, join(folder, each), { recursive: true });
const git = (...words: readonly string[]): void => { execFileSync('git', ['-c', 'user.name=grower', '-c', 'user.email=grower@example.org', ...words], { cwd: folder }); };
git('init', '--quiet', '--initial-branch', 'main');
git('add', '--all');
git('commit', '--quiet', '--message', 'as it stands');
afterAll(() => { rmSync(folder, { recursive: true }); });

test('every command is looked at, those of `new` too', () => {
  const names = all.map(({ words }) => words.join(' '));
  expect(names).toEqual(expect.arrayContaining(['', 'ask', 'compare', 'explain', 'plan', 'due', 'keepers', 'measure', 'year', 'operations', 'species', 'rule', 'places', 'vet', 'new', 'new species', 'new rule', 'new source', 'cover', 'shift']));
});

test('help loads no parser of YAML', () => {
  const refusing = `data:text/javascript,${encodeURIComponent("import { register } from 'node:module'; register('data:text/javascript,' + encodeURIComponent(\"export const resolve = (name, context, next) => { if (name === 'yaml') throw new Error('the parser is loaded'); return next(name, context); }\"));")}`;
  const run = (...words: readonly string[]): string => {
    const { stdout, stderr } = spawnSync(process.execPath, ['--import', refusing, `${root}dist/cli/main.js`, ...words], { encoding: 'utf8', cwd: root });
    return stdout + stderr;
  };
  for (const { words, text } of all) expect(run(...words, '--help')).toBe(text);
  /* What does read YAML is stopped here: else nothing is tried. */
  expect(run('vet', folder)).toContain('the parser is loaded');
});

test.each(all.map(({ words, text }) => [['sparebud', ...words].join(' '), text] as const))('the help of `%s` ends in an example that runs and answers', (command, text) => {
  const [, examples] = /\nExamples?:\n((?: {2}sparebud .*\n)+)$/.exec(`${text.trimEnd()}\n`) ?? [];
  expect(examples, text).toBeDefined();
  const shown = [...text.matchAll(/\n(\S+\.yaml):\n((?: {2}.*\n)+)/g)];
  for (const line of examples!.trimEnd().split('\n').map((each) => each.trim())) {
    expect(line.includes(`${command} `) || line.endsWith(command), line).toBe(true);
    for (const [, name, held] of shown) writeFileSync(join(folder, name!), held!);
    expect(runShell(root, folder)(line)).not.toBe('');
    git('checkout', '--quiet', '--', '.');
    git('clean', '--quiet', '--force', '-d');
  }
}, 120_000);

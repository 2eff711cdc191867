import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { root, shipped } from '../shipped.js';

const run = (...words: readonly string[]) => spawnSync(process.execPath, [`${root}dist/cli/main.js`, 'operations', ...words], { encoding: 'utf8' });

test('every operation is listed under the kind of work that it is, with its trade names, within 80 columns', () => {
  const { stdout } = run();
  for (const [op, { aliases, group }] of Object.entries(shipped.operations)) {
    const name = shipped.wording[`group.${group}`]!;
    expect(stdout).toMatch(new RegExp(`^${name.charAt(0).toUpperCase()}${name.slice(1)}\n(?: .*\n)* {2}${op} `, 'm'));
    for (const alias of Object.keys(aliases)) expect(stdout.replaceAll(/\s+/g, ' ')).toContain(alias);
  }
  expect(Math.max(...stdout.split('\n').map((line) => line.length))).toBeLessThanOrEqual(80);
});

test('a trade name shows its operation with each parameter', () => {
  const { stdout } = run('flush cut');
  expect(stdout).toMatch(/^remove a branch {2}\(remove-branch\)\n/);
  for (const name of shipped.operations['remove-branch']!.parameters) expect(stdout).toContain(`\n  ${name} `);
});

test('a misspelt operation is told with its near miss', () => {
  expect(run('rpot')).toMatchObject({ status: 2, stdout: '', stderr: '`rpot` is not an operation\n  did you mean `repot`?\n' });
});

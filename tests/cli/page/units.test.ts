import { spawnSync } from 'node:child_process';
import { expect, test } from 'vitest';
import { root } from '../../shipped.js';

const run = (...words: readonly string[]) => spawnSync(process.execPath, [`${root}dist/cli/main.js`, ...words], { cwd: root, encoding: 'utf8', env: { ...process.env, NO_COLOR: '1', COLUMNS: '100' } });

const thick = ['remove-branch', 'trident maple', '--branch-diameter-mm', '22', '--trunk-diameter-mm', '60', '--finish', 'stub', '--latitude', '51.5', '--longitude', '3.7', '--date', '2027-03-15'];
const questions: readonly (readonly [string, RegExp, readonly string[]])[] = [
  ['ask', /dies back \S+ to \S+ in/, ['ask', ...thick]],
  ['compare', / \d\/\d+–\S+ in/, ['compare', ...thick, '--or', 'operation.finish=collar']],
  ['year', /\d+ mi away/, ['year', 'trident maple', '--latitude', '51.5', '--longitude', '3.7', '--only', 'repot']],
  ['measure', /It is [\d/.]+ in thick/, ['measure', 'docs/demo/keepers-pine.yaml']],
  ['keepers', /in wide|in apart/, ['keepers', 'docs/demo/keepers-pine.yaml', '--date', '2027-03-01']],
  ['plan', /./, ['plan', 'docs/demo/plan-shrub.yaml']],
  ['due', /./, ['due', 'docs/demo/collection.yaml', '--date', '2027-05-20']],
  ['species', /\d+ °F\n/, ['species', 'trident maple']],
  ['rule', /for each 1 in of trunk/, ['rule', 'roots/collected-again']],
  ['places', / 152 mi away/, ['places', '--near=51.1,3.7']],
];

test.each(questions)('%s prints inches and degrees Fahrenheit where they are asked for', (_, shows, words) => {
  const { stdout, status } = run(...words, '--units', 'imperial');
  expect(status).toBe(0);
  expect(stdout).toMatch(shows);
  expect(stdout).not.toMatch(/\d\s(mm|cm|km|m|°?C)\b/);
});

test('JSON stays metric whatever is asked for', () => {
  const words = ['ask', ...thick, '--json'];
  expect(run(...words, '--units', 'imperial').stdout).toBe(run(...words).stdout);
});

test('units that there are not are named with the near miss', () => {
  const { stdout, stderr, status } = run('species', 'trident maple', '--units', 'imperal');
  expect([stdout, stderr, status]).toEqual(['', '`imperal` is not allowed in `--units`\n  did you mean `imperial`?\n', 2]);
  expect(run('species', '--units', 'stone').stderr).toContain('accepted: metric, imperial');
});

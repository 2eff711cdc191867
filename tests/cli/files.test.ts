import { spawnSync } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, describe, expect, it } from 'vitest';
import { root } from '../shipped.js';

const folder = mkdtempSync(join(tmpdir(), 'files-'));
afterAll(() => { rmSync(folder, { recursive: true }); });
const run = (...words: readonly string[]) => spawnSync(process.execPath, [`${root}dist/cli/main.js`, ...words], { encoding: 'utf8', cwd: folder });
const written = (name: string, text: string): string => {
  writeFileSync(join(folder, name), text);
  return name;
};

describe.each(['ask', 'ask --lines', 'compare', 'year', 'plan', 'due', 'keepers', 'measure', 'explain'])('sparebud %s', (command) => {
  const words = command.split(' ');

  it('says that a file is not there, with the status of what was not answered', () => {
    expect(run(...words, 'none.yaml')).toMatchObject({ status: 2, stdout: '', stderr: 'no file `none.yaml` to read\n  name a YAML or JSON file, or - for standard input\n' });
  });

  it.skipIf(command === 'ask --lines')('says that a file holds nothing', () => {
    expect(run(...words, written('empty.yaml', '# nothing yet\n'))).toMatchObject({ status: 2, stdout: '', stderr: 'nothing stands in `empty.yaml`\n  write what you mean to ask into it, as YAML or JSON\n' });
  });
});

describe('a file as it is written by hand', () => {
  it('is told how to write an operation by its name alone, and a year, which YAML takes for a number', () => {
    const { stderr, status } = run('ask', written('tree.yaml', 'tree: { species: larch, lastRepotted: 2021 }\noperation: jin\n'));
    expect(status).toBe(2);
    expect(stderr).toContain('`jin` is a string in `operation`\n  accepted: object, as in `{ op: jin }`\n');
    expect(stderr).toContain('`2021` is a number in `tree.lastRepotted`\n  accepted: string, as in `"2021"`\n');
  });

  it('does not say that nothing is due where no tree could be answered', () => {
    const { stdout, status } = run('due', written('trees.yaml', 'trees: [{ id: one, tree: { species: no such tree } }]\n'), '--date', '2027-03-01');
    expect([stdout, status]).toEqual(['Nothing is due on 2027-03-01 among the trees that could be answered.\n', 2]);
  });
});

describe('rules', () => {
  it.each([['roots', /^roots\/\S+ /], ['wire', /^\S+\/\S+ /]])('are listed by theme or operation: %s', (name, line) => {
    const { stdout, status } = run('rule', name);
    expect(status).toBe(0);
    expect(stdout.trimEnd().split('\n').length).toBeGreaterThan(5);
    for (const each of stdout.trimEnd().split('\n')) expect(each).toMatch(line);
  });
});

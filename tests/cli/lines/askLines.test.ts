import { spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import { describe, expect, it } from 'vitest';
import { root } from '../../shipped.js';

const words = (jobs: string, ...flags: readonly string[]): readonly string[] => [`${root}dist/cli/main.js`, 'ask', '--lines', '--jobs', jobs, '--fields', 'verdict,meta', ...flags];
const ask = (jobs: string, input: Buffer | string, ...flags: readonly string[]): { readonly stdout: string; readonly stderr: string; readonly status: number | null } =>
  spawnSync(process.execPath, words(jobs, ...flags), { input, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });

/** What one thread answers, once two have answered the same. */
const bothWays = (input: Buffer | string): { readonly stdout: string; readonly status: number | null } => {
  const [one, two] = ['1', '2'].map((jobs) => ask(jobs, input));
  expect(two!.stdout).toBe(one!.stdout);
  expect(two!.status).toBe(one!.status);
  return one!;
};

const proposal = (id: unknown, meta?: object): string => JSON.stringify({ id, tree: { species: 'acer-buergerianum' }, operation: { op: 'repot', rootsRemoved: 0.2 }, date: '2027-03-20', where: { latitude: 51 }, meta });
const rows = (stdout: string): readonly Readonly<Record<string, unknown>>[] => stdout.split('\n').slice(0, -1).map((line) => JSON.parse(line) as Readonly<Record<string, unknown>>);

describe('a batch of lines', () => {
  it('is the same however its lines end, with a byte order mark before it, empty lines in it and no newline at its end', () => {
    const lines = ['a', 'b', 'c'].map((id) => proposal(id));
    const plain = bothWays(`${lines.join('\n')}\n`);
    expect([rows(plain.stdout).map(({ id }) => id), plain.status]).toEqual([['a', 'b', 'c'], 0]);
    for (const input of [lines.join('\n'), `${lines.join('\r\n')}\r\n`, `\uFEFF${lines.join('\n')}`, `\n  \n${lines.join('\n\n')}\n\n`]) expect(bothWays(input)).toMatchObject({ stdout: plain.stdout, status: 0 });
    expect(bothWays('')).toMatchObject({ stdout: '', status: 0 });
  }, 120_000);

  it('tells what cannot be understood in its place, by the number of its line, and goes on', () => {
    const badBytes = Buffer.concat([Buffer.from('{"id":"bytes","tree":{"species":"acer'), Buffer.from([0xff, 0xc3]), Buffer.from('"},"operation":{"op":"repot"}}\n')]);
    const before = ['hello', '[1,2]', 'null', '{"id":"less"}', '{"id":"a\u0000b"}', '', `${proposal('two')}${proposal('one line')}`, 'z'.repeat(5_000_000)];
    const { stdout, status } = bothWays(Buffer.concat([Buffer.from(`${before.join('\n')}\n`), badBytes, Buffer.from(proposal('good'))]));
    expect(rows(stdout).map(({ id, line, error, verdict }) => [id, line ?? verdict, (error as { readonly code: string } | undefined)?.code])).toEqual([
      [null, 1, 'bad-json'], [null, 2, 'wrong-type'], [null, 3, 'wrong-type'], ['less', 4, 'missing'], [null, 5, 'bad-json'], [null, 7, 'bad-json'], [null, 8, 'bad-json'],
      ['bytes', 9, 'unknown-species'], ['good', expect.stringMatching(/allowed|risky|advise-against/), undefined],
    ]);
    expect(status).toBe(2);
    expect(Math.max(...stdout.split('\n').map((line) => line.length))).toBeLessThan(2000);
  }, 120_000);

  it('answers a line of five million letters, one with a line separator in its text, and ids that come twice, as any other', () => {
    const large = { note: 'y'.repeat(5_000_000) };
    const { stdout, status } = bothWays([proposal('large', large), proposal('a\u2028b'), proposal('twice'), proposal('twice')].join('\n'));
    expect(rows(stdout).map(({ id, verdict }) => [id, verdict !== undefined])).toEqual([['large', true], ['a\u2028b', true], ['twice', true], ['twice', true]]);
    expect(rows(stdout)[0]!['meta']).toEqual(large);
    expect(status).toBe(0);
  }, 120_000);

  it.skipIf(process.platform !== 'linux')('says that its input cannot be read, once what was read is answered', () => {
    /* A file that is there and breaks off at its first byte. */
    for (const jobs of ['1', '2']) {
      const { stdout, stderr, status } = ask(jobs, '', '/proc/self/mem');
      expect([stdout, status]).toEqual(['', 2]);
      expect(stderr).toMatch(/^`\/proc\/self\/mem` cannot be read: EIO: .+\n {2}name a file of one JSON proposal a line, or - for standard input\n$/);
    }
  }, 120_000);

  it.each(['0', '-1', '999', 'x', '1.5', ''])('refuses `--jobs %s`', (jobs) => {
    const { stdout, stderr, status } = ask(jobs, proposal('a'));
    expect([stdout, status]).toEqual(['', 2]);
    expect(stderr).toMatch(/'--jobs <number>' argument '.*' is invalid\. a whole number from 1 to 64/);
  });

  it.each(['1', '2'])('ends with whole lines when it is told to stop, on %s', async (jobs) => {
    const asking = spawn(process.execPath, words(jobs), { stdio: ['pipe', 'pipe', 'pipe'] });
    let [stdout, stderr, told] = ['', '', 0];
    asking.stdin.on('error', () => undefined);
    asking.stdin.write(Array.from({ length: 20_000 }, (_, i) => `${proposal(i)}\n`).join(''));
    asking.stderr.on('data', (text: Buffer) => { stderr += text.toString(); });
    asking.stdout.on('data', (text: Buffer) => {
      stdout += text.toString();
      if (told === 0 && stdout.length > 5000 && asking.kill('SIGINT')) told = rows(stdout).length;
    });
    const [status] = (await once(asking, 'close')) as [number | null];
    asking.stdin.destroy();
    expect(status).toBe(130);
    expect(stdout.endsWith('\n')).toBe(true);
    const ids = rows(stdout).map(({ id }) => id);
    expect(ids).toEqual(Array.from({ length: ids.length }, (_, i) => i));
    expect(ids.length).toBeGreaterThanOrEqual(told);
    expect(ids.length).toBeLessThan(told + 2000);
    expect(stderr).toBe(`${ids.length.toLocaleString('en')} answered, ${/, ([\d,]+) a/.exec(stderr)?.[1]} a second; stopped by SIGINT\n`);
  }, 120_000);

  it.each(['1', '2'])('ends without a word when nobody reads the answers any more, on %s', async (jobs) => {
    const asking = spawn(process.execPath, words(jobs), { stdio: ['pipe', 'pipe', 'pipe'] });
    let stderr = '';
    asking.stdin.on('error', () => undefined);
    asking.stdin.write(Array.from({ length: 20_000 }, (_, i) => `${proposal(i)}\n`).join(''));
    asking.stderr.on('data', (text: Buffer) => { stderr += text.toString(); });
    await once(asking.stdout, 'data');
    asking.stdout.destroy();
    const [status] = (await once(asking, 'close')) as [number | null];
    asking.stdin.destroy();
    expect([status, stderr]).toEqual([0, '']);
  }, 120_000);
});

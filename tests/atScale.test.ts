import { type ChildProcess, execFile, execFileSync, spawn, spawnSync } from 'node:child_process';
import { cpSync, existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync } from 'node:fs';
import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { promisify } from 'node:util';
import { Queue } from 'bullmq';
import fc from 'fast-check';
import { asyncBufferFromFile, parquetReadObjects } from 'hyparquet';
import { Redis } from 'ioredis';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { plausibleProposal } from './laws/plausibleProposal.js';
import { advisor, root, shipped, stations } from './shipped.js';

/* The example of docs/at-scale.md, as somebody has it who installed what its package.json names. */
const folder = mkdtempSync(join(tmpdir(), 'at-scale-'));
cpSync(`${root}docs/at-scale`, folder, { recursive: true });
mkdirSync(join(folder, 'node_modules'));
for (const name of ['aws4fetch', 'bullmq', 'hyparquet-writer', 'ioredis']) symlinkSync(`${root}node_modules/${name}`, join(folder, 'node_modules', name));
symlinkSync(root, join(folder, 'node_modules/sparebud'));
const hasDuckDb = existsSync(`${root}node_modules/@duckdb/node-api`);
if (hasDuckDb) symlinkSync(`${root}node_modules/@duckdb`, join(folder, 'node_modules/@duckdb'));
else process.stdout.write('no question was asked of the tables of docs/at-scale.md: @duckdb/node-api is not installed, for it weighs 70 MB (npm install --no-save @duckdb/node-api@1.5.5-r.5)\n');
afterAll(() => { rmSync(folder, { recursive: true }); });

const drawn = fc.sample(plausibleProposal(shipped, stations), { numRuns: 300, seed: 20260402 });
const badLine = (i: number): boolean => i % 150 === 7;
const lines = Array.from({ length: 3500 }, (_, i) => (badLine(i) ? (i % 300 === 7 ? '{"id":' : '{"tree":{"species":"no such tree"},"operation":{"op":"repot"}}') : JSON.stringify({ ...drawn[i % drawn.length], id: i })));

const hasServer = ((): boolean => {
  const there = spawnSync('redis-server', ['--version']).status === 0;
  if (!there) process.stdout.write('the queue of docs/at-scale.md was not tried: no redis-server on this machine (Debian: apt-get install redis-server)\n');
  return there;
})();

describe.skipIf(!hasServer)('batches on a queue', () => {
  const socket = join(folder, 'redis.sock');
  const store = join(folder, 'store');
  const env = { ...process.env, REDIS: socket, STORE: store, BATCH_LINES: '1500', SILENT_MS: '5000' };
  const produce = (): readonly string[] => execFileSync(process.execPath, ['produce.mjs'], { cwd: folder, env, input: `${lines.join('\n')}\n`, encoding: 'utf8' }).trimEnd().split('\n');
  const started: ChildProcess[] = [];
  const start = (command: string, ...words: readonly string[]): ChildProcess => {
    const child = spawn(command, words, { cwd: folder, env, stdio: ['ignore', 'ignore', 'inherit'] });
    started.push(child);
    return child;
  };
  const until = async (holds: () => boolean | Promise<boolean>): Promise<void> => {
    for (let i = 0; i < 6000 && !(await holds()); i++) await wait(20);
    expect(await holds()).toBe(true);
  };
  const stored = (kind: string): readonly string[] => (existsSync(join(store, kind)) ? readdirSync(join(store, kind)).filter((name) => name.endsWith('.jsonl')).sort() : []);
  const rows = (kind: string): readonly Readonly<Record<string, unknown>>[] => stored(kind).flatMap((name) => readFileSync(join(store, kind, name), 'utf8').split('\n').filter((line) => line !== '').map((line) => JSON.parse(line) as Readonly<Record<string, unknown>>));

  let redis: Redis;
  let queue: Queue;
  let batches: readonly string[];
  let lostBatch: string;
  beforeAll(async () => {
    start('redis-server', '--port', '0', '--unixsocket', socket, '--save', '', '--appendonly', 'no');
    await until(() => existsSync(socket));
    redis = new Redis(socket, { maxRetriesPerRequest: null });
    queue = new Queue('answer-batches', { connection: redis });
    batches = produce();
    /* The first worker is lost in the middle of a batch, with no word to the queue. */
    const lost = start(process.execPath, 'work.mjs');
    await until(async () => (await queue.getActiveCount()) === 1);
    lostBatch = (await queue.getActive())[0]!.id!;
    lost.kill('SIGKILL');
    const others = [start(process.execPath, 'work.mjs'), start(process.execPath, 'work.mjs')];
    await until(async () => (await queue.getCompletedCount()) === batches.length);
    for (const worker of others) worker.kill('SIGTERM');
    await until(() => others.every(({ exitCode }) => exitCode === 0));
  }, 240_000);
  afterAll(async () => {
    await queue.close();
    await redis.quit();
    for (const child of started) if (child.exitCode === null) child.kill('SIGKILL');
  });

  it('are all answered, that of a lost worker by another', async () => {
    expect(batches.length).toBe(3);
    for (const kind of ['batches', 'answers', 'bad']) expect(stored(kind)).toEqual(batches.map((batch) => `${batch}.jsonl`));
    expect((await queue.getJob(lostBatch))!.attemptsStarted).toBeGreaterThanOrEqual(2);
    const said = await Promise.all(batches.map(async (batch) => (await queue.getJob(batch))!.returnvalue as { readonly knowledge: string; readonly answered: number; readonly bad: number }));
    expect(said.reduce((sum, { answered, bad }) => sum + answered + bad, 0)).toBe(lines.length);
    for (const { knowledge } of said) expect(knowledge).toMatch(/^\d+\.\d+\.\d+\+[0-9a-f]{7}$/);
  });

  it('hold for each line what the advisor says of it, and bad lines apart with their place in the input', async () => {
    const good = lines.flatMap((line, i) => (badLine(i) ? [] : [JSON.parse(line) as { readonly id: number }]));
    const expected = [];
    for (const proposal of good) {
      const { verdict, range, settled } = await advisor.verdict(proposal);
      expected.push({ id: proposal.id, verdict, range, settled });
    }
    expect(rows('answers')).toEqual(expected);
    expect(rows('bad').map(({ line, error }) => [line, (error as { readonly code: string }).code])).toEqual(lines.flatMap((_, i) => (badLine(i) ? [[i + 1, i % 300 === 7 ? 'bad-json' : 'unknown-species']] : [])));
  }, 120_000);

  it('are queued once, however often the same input is sent', async () => {
    expect(produce()).toEqual(batches);
    expect(await queue.getJobCounts('waiting', 'active', 'delayed', 'completed', 'failed')).toEqual({ waiting: 0, active: 0, delayed: 0, completed: 3, failed: 0 });
  }, 60_000);

  it('give the same bytes when they are answered again', async () => {
    const before = stored('answers').map((name) => readFileSync(join(store, 'answers', name), 'utf8'));
    await queue.obliterate();
    rmSync(join(store, 'answers'), { recursive: true });
    produce();
    const again = start(process.execPath, 'work.mjs');
    await until(async () => (await queue.getCompletedCount()) === batches.length);
    again.kill('SIGTERM');
    await until(() => again.exitCode === 0);
    expect(stored('answers').map((name) => readFileSync(join(store, 'answers', name), 'utf8'))).toEqual(before);
  }, 240_000);
});

it('the example names the versions that it is tried with', () => {
  const read = (path: string) => JSON.parse(readFileSync(path, 'utf8')) as { readonly version?: string; readonly dependencies: Readonly<Record<string, string>>; readonly devDependencies?: Readonly<Record<string, string>> };
  const ours = read(`${root}package.json`);
  const { sparebud, ...others } = read(`${root}docs/at-scale/package.json`).dependencies;
  expect(sparebud).toBe(`^${ours.version!}`);
  expect(ours.devDependencies).toMatchObject(others);
});

describe('batches and answers', () => {
  const tried = `
    const { get, put } = await import('./store.mjs');
    await put('answers/first.jsonl', 'frost\\n');
    await put('answers/first.jsonl', 'früh\\n');
    const missing = await get('answers/second.jsonl').catch((cause) => cause.message);
    process.stdout.write(JSON.stringify([await get('answers/first.jsonl'), missing]));`;
  const kept = async (store: string): Promise<unknown> =>
    JSON.parse((await promisify(execFile)(process.execPath, ['--input-type=module', '--eval', tried], { cwd: folder, env: { ...process.env, STORE: store, AWS_ACCESS_KEY_ID: 'grower', AWS_SECRET_ACCESS_KEY: 'no secret', AWS_REGION: '' } })).stdout);

  it('are kept in a folder', async () => {
    expect(await kept(join(folder, 'kept'))).toEqual(['früh\n', expect.stringMatching(/^ENOENT/)]);
    expect(readdirSync(join(folder, 'kept/answers'))).toEqual(['first.jsonl']);
  }, 60_000);

  it('are kept in a bucket, each request signed as S3 wants it, and what the store refuses is an error', async () => {
    const objects = new Map<string, string>();
    const unsigned: string[] = [];
    const server = createServer((request, response) => {
      const { method, url = '', headers } = request;
      if (!/^AWS4-HMAC-SHA256 Credential=grower\/\d{8}\/us-east-1\/s3\/aws4_request, SignedHeaders=host;.+, Signature=[0-9a-f]{64}$/.test(headers.authorization ?? '')) unsigned.push(`${method} ${url}`);
      let body = '';
      request.setEncoding('utf8').on('data', (text: string) => { body += text; }).on('end', () => {
        if (method === 'PUT') objects.set(url, body);
        response.statusCode = objects.has(url) ? 200 : 404;
        response.end(method === 'PUT' ? '' : (objects.get(url) ?? 'NoSuchKey'));
      });
    });
    await new Promise<void>((listening) => { server.listen(0, '127.0.0.1', listening); });
    try {
      const read = await kept(`http://127.0.0.1:${(server.address() as AddressInfo).port}/trees`);
      expect(read).toEqual(['früh\n', 'GET answers/second.jsonl: 404 NoSuchKey']);
    } finally {
      server.close();
    }
    expect([...objects]).toEqual([['/trees/answers/first.jsonl', 'früh\n']]);
    expect(unsigned).toEqual([]);
  }, 60_000);
});

describe('a table in columns', () => {
  /* The first hundred proposals, each on two days; what is asked of the table goes along as `meta`. */
  const asked = drawn.slice(0, 100).flatMap((proposal, i) => ['2027-03-20', '2027-03-27'].map((date) => ({ ...proposal, date, id: i, meta: { tree: `tree ${i}`, operation: proposal.operation.op, date } })));
  let answers: readonly { readonly id?: unknown; readonly meta?: { readonly tree: string; readonly operation: string; readonly date: string }; readonly verdict?: string; readonly range?: readonly string[]; readonly settled?: boolean; readonly error?: { readonly code: string } }[];
  beforeAll(() => {
    const input = [...asked.map((proposal) => JSON.stringify(proposal)), '{"id":'].join('\n');
    const { stdout } = spawnSync(process.execPath, [`${root}dist/cli/main.js`, 'ask', '--lines', '--fields', 'verdict,range,settled,meta'], { input, encoding: 'utf8' });
    execFileSync(process.execPath, ['table.mjs', 'answers.parquet'], { cwd: folder, input: stdout });
    answers = stdout.trimEnd().split('\n').map((line) => JSON.parse(line) as (typeof answers)[number]);
  }, 60_000);

  it('holds what `ask --lines` wrote, bad lines by their code', async () => {
    const read = await parquetReadObjects({ file: await asyncBufferFromFile(join(folder, 'answers.parquet')) });
    expect(answers.at(-1)!.error?.code).toBe('bad-json');
    expect(read).toEqual(answers.map(({ id, meta, verdict = null, range, settled = null, error }) => ({
      id: id === undefined || id === null ? null : String(id), tree: meta?.tree ?? null, operation: meta?.operation ?? null, date: meta?.date ?? null, verdict, best: range?.[0] ?? null, worst: range?.[1] ?? null, settled, error: error?.code ?? null,
    })));
  });

  it.skipIf(!hasDuckDb)('tells which trees are allowed what in a week', () => {
    const told = execFileSync(process.execPath, ['week.mjs', 'answers.parquet', '2027-03-18'], { cwd: folder, encoding: 'utf8' }).trimEnd().split('\n').map((line) => JSON.parse(line) as object);
    const allowed = answers.flatMap(({ verdict, meta }) => (verdict === 'allowed' && meta?.date === '2027-03-20' ? [{ tree: meta.tree, operation: meta.operation, days: [meta.date] }] : []));
    expect(allowed.length).toBeGreaterThan(5);
    expect(told).toEqual(allowed.sort((a, b) => (a.tree < b.tree ? -1 : 1)));
  }, 60_000);
});

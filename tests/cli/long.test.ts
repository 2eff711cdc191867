import { spawn } from 'node:child_process';
import { createHash } from 'node:crypto';
import { createInterface } from 'node:readline';
import { setTimeout as passed } from 'node:timers/promises';
import { fileURLToPath } from 'node:url';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { plausibleProposal } from '../laws/plausibleProposal.js';
import { root, shipped, stations } from '../shipped.js';
import { tellMemory } from './tellMemory.js';

/* A million lines, and ten million answers of one advisor: `npm run long`. LONG is the share of them, so that a part can be tried: `LONG=0.01 npm run long`. */
const share = Number(process.env['LONG'] ?? 0);
const hours = 3_600_000;
const say = (text: string): boolean => process.stdout.write(`${text}\n`);

/** Answers so many lines, one after the other without a copy of them in memory. */
const batch = async (proposals: readonly object[], count: number, ...flags: readonly string[]): Promise<{ readonly hash: string; readonly rate: string; readonly mostMb: number; readonly outOfOrder: number; readonly answers: number }> => {
  const asking = spawn(process.execPath, ['--import', tellMemory, `${root}dist/cli/main.js`, 'ask', '--lines', '--fields', 'verdict,range', ...flags], { stdio: ['pipe', 'pipe', 'pipe', 'pipe'] });
  const said = ['', ''];
  for (const [i, from] of [asking.stderr!, asking.stdio[3]!].entries()) from.on('data', (text: Buffer) => { said[i] += text.toString(); });
  const hash = createHash('sha256');
  let [answers, outOfOrder] = [0, 0];
  const read = (async () => {
    for await (const line of createInterface({ input: asking.stdout! })) {
      hash.update(line).update('\n');
      if (!line.startsWith(`{"id":"q${answers}",`)) outOfOrder++;
      answers++;
    }
  })();
  for (let i = 0; i < count; i++) if (!asking.stdin!.write(`${JSON.stringify({ ...proposals[i % proposals.length], id: `q${i}` })}\n`)) await new Promise<void>((resolve) => { asking.stdin!.once('drain', resolve); });
  asking.stdin!.end();
  await read;
  await passed(200);
  return { hash: hash.digest('hex'), rate: said[0]!.trim(), mostMb: Number(said[1]) / 1024, outOfOrder, answers };
};

test.skipIf(share === 0)('a million lines about twenty thousand different trees are answered in order within 250 MB, by one thread and by two, with the same bytes', async () => {
  const proposals = fc.sample(plausibleProposal(shipped, stations), { numRuns: 20_000, seed: 20260502 });
  const count = Math.round(1_000_000 * share);
  const one = await batch(proposals, count);
  say(`one thread: ${one.rate}, ${one.mostMb.toFixed(0)} MB at its most`);
  const two = await batch(proposals, count, '--jobs', '2');
  say(`two threads: ${two.rate}, ${two.mostMb.toFixed(0)} MB at their most`);
  expect([one.answers, one.outOfOrder]).toEqual([count, 0]);
  expect(two.hash).toBe(one.hash);
  expect(one.mostMb).toBeLessThan(250);
  expect(two.mostMb).toBeLessThan(250);
}, 4 * hours);

test.skipIf(share === 0)('an advisor that has answered ten million proposals holds no more than after the first of them', async () => {
  const proposals = fc.sample(plausibleProposal(shipped, stations), { numRuns: 2000, seed: 20260503 });
  const tenth = Math.round(1_000_000 * share);
  const asking = spawn(process.execPath, ['--expose-gc', fileURLToPath(new URL('heldMemory.mjs', import.meta.url)), String(tenth), '11'], { stdio: ['pipe', 'pipe', 'inherit'] });
  asking.stdin.end(proposals.map((proposal) => JSON.stringify(proposal)).join('\n'));
  const marks: number[] = [];
  for await (const line of createInterface({ input: asking.stdout })) {
    marks.push(Number(line));
    say(`after ${(marks.length * tenth).toLocaleString('en')} verdicts and a hundredth as many assessments: ${marks.at(-1)!.toFixed(1)} MB held`);
  }
  expect(marks.length).toBe(11);
  expect(Math.max(...marks.slice(1)) - marks[0]!).toBeLessThan(10);
}, 10 * hours);

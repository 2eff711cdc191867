import { Readable, Writable } from 'node:stream';
import { setTimeout as passed } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import type { AnsweredChunk, Chunk } from '../../../src/cli/lines/answerChunk.js';
import { type Answerer, answerLines } from '../../../src/cli/lines/answerLines.js';

/** Gives each line back, after a while that differs from chunk to chunk, and notes what it was given. */
const echo = (chunkLines: number, atOnce: number): Answerer & { readonly given: Chunk[] } => {
  const given: Chunk[] = [];
  const answer = async (chunk: Chunk): Promise<AnsweredChunk> => {
    given.push(chunk);
    await passed((given.length * 7) % 5);
    return { text: chunk.lines.map((line) => `${line}\n`).join(''), asked: chunk.lines.length, failed: 0, met: false };
  };
  return { answer, chunkLines, atOnce, given };
};

const written = (slowMs = 0): { readonly to: Writable; readonly texts: string[] } => {
  const texts: string[] = [];
  return { texts, to: new Writable({ highWaterMark: 1, write: (text: Buffer, _, done) => { texts.push(text.toString()); setTimeout(done, slowMs); } }) };
};

const run = async (answerer: Answerer, input: Iterable<string> | AsyncIterable<string>, to: Writable, signal = new AbortController().signal) =>
  await answerLines(answerer, {}, Readable.from(input, { objectMode: false }), to, () => undefined, signal);

const numbered = (count: number): string => Array.from({ length: count }, (_, i) => `${i}\n`).join('');

describe('lines on their way', () => {
  it('wait for who reads the answers slowly: no more chunks are under way than were allowed, and none is lost', async () => {
    const answerer = echo(10, 4);
    const { to, texts } = written(3);
    let most = 0;
    const slow = new Writable({ highWaterMark: 1, write: (text: Buffer, encoding, done) => { most = Math.max(most, answerer.given.length - texts.length); to.write(text, encoding, done); } });
    expect(await run(answerer, [numbered(1005)], slow)).toEqual({ asked: 1005, failed: 0, met: false });
    expect(texts.join('')).toBe(numbered(1005));
    expect(most).toBeGreaterThan(1);
    expect(most).toBeLessThanOrEqual(4);
  });

  it('are handed over few at a time where they are long, so that the memory does not fill', async () => {
    const answerer = echo(50, 4);
    const { to, texts } = written();
    const long = `${'x'.repeat(400_000)}\n`;
    await run(answerer, [long.repeat(20), numbered(60)], to);
    expect(Math.max(...answerer.given.map(({ lines }) => lines.join('').length))).toBeLessThan(1_500_000);
    expect(answerer.given.at(-1)!.lines.length).toBeGreaterThan(5);
    expect(texts.join('')).toBe(long.repeat(20) + numbered(60));
  });

  it('are answered as far as they were read where the input breaks off, and the fault is told after that', async () => {
    const { to, texts } = written();
    const broken = async function* () {
      yield numbered(25);
      await passed(20);
      throw new Error('the disk is gone');
    };
    await expect(run(echo(10, 4), broken(), to)).rejects.toThrow('the disk is gone');
    expect(texts.join('')).toBe(numbered(25));
  });

  it('are no longer read once a stop was asked for; those that were read are answered', async () => {
    const stop = new AbortController();
    const { to, texts } = written();
    const endless = async function* () {
      for (let i = 0; ; i++) {
        if (i === 100) stop.abort();
        yield `${i}\n`;
        await passed(0);
      }
    };
    const { asked } = await run(echo(10, 4), endless(), to, stop.signal);
    expect(asked).toBeGreaterThanOrEqual(90);
    expect(asked).toBeLessThan(120);
    expect(texts.join('')).toBe(numbered(asked));
  });
});

import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
import { setImmediate } from 'node:timers/promises';
import type { AnsweredChunk, Chunk, LineOptions } from './answerChunk.js';

export interface Answered {
  readonly asked: number;
  readonly failed: number;
  readonly met: boolean;
}

/** Who answers: this thread a line at a time, so that each answer comes as soon as its line, or several threads with a chunk each. */
export interface Answerer {
  readonly answer: (chunk: Chunk) => Promise<AnsweredChunk>;
  readonly chunkLines: number;
  /** How many chunks may be under way or waiting to be written. */
  readonly atOnce: number;
}

/** Letters that end a chunk before it has all its lines, so that long lines do not fill the memory. */
const chunkLetters = 1_000_000;

/** What editors on Windows put before the first line; it belongs to no line. */
const byteOrderMark = /^\uFEFF/;

/**
 * Reads one JSON proposal a line and writes one JSON answer a line, in the order of the lines, holding no more than a few chunks.
 * Where it is told to stop, or the input breaks off, what was read is answered.
 */
export const answerLines = async ({ answer, chunkLines, atOnce }: Answerer, options: LineOptions, from: Readable, to: Writable, progress: (asked: number) => void, signal: AbortSignal): Promise<Answered> => {
  let [asked, failed, met] = [0, 0, false];
  const underWay: Promise<AnsweredChunk>[] = [];
  const write = async (chunk: Promise<AnsweredChunk> | undefined): Promise<void> => {
    if (chunk === undefined) return;
    const answered = await chunk;
    asked += answered.asked;
    failed += answered.failed;
    met ||= answered.met;
    if (answered.text !== '' && !to.write(answered.text)) await new Promise<void>((resolve) => { to.once('drain', resolve); });
    progress(asked);
  };
  let lines: string[] = [];
  let [first, letters] = [1, 0];
  const send = async (): Promise<void> => {
    underWay.push(answer({ ...options, lines, first }));
    first += lines.length;
    lines = [];
    letters = 0;
    if (underWay.length >= atOnce) await write(underWay.shift());
  };
  try {
    for await (const line of createInterface({ input: from, crlfDelay: Infinity, signal })) {
      const number = first + lines.length;
      /* Answers wait for nothing: without a pause now and then no signal would be heard. */
      if (number % 20 === 0) await setImmediate();
      if (signal.aborted) break;
      lines.push(number === 1 ? line.replace(byteOrderMark, '') : line);
      letters += line.length;
      if (lines.length === chunkLines || letters >= chunkLetters) await send();
    }
  } finally {
    await send();
    for (const chunk of underWay) await write(chunk);
  }
  return { asked, failed, met };
};

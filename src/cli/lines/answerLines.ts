import { createInterface } from 'node:readline';
import type { Readable, Writable } from 'node:stream';
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

/** Reads one JSON proposal a line and writes one JSON answer a line, in the order of the lines, holding no more than a few chunks. */
export const answerLines = async ({ answer, chunkLines, atOnce }: Answerer, options: LineOptions, from: Readable, to: Writable, progress: (asked: number) => void): Promise<Answered> => {
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
  let first = 1;
  const send = async (): Promise<void> => {
    underWay.push(answer({ ...options, lines, first }));
    first += lines.length;
    lines = [];
    if (underWay.length >= atOnce) await write(underWay.shift());
  };
  for await (const line of createInterface({ input: from, crlfDelay: Infinity })) {
    lines.push(line);
    if (lines.length === chunkLines) await send();
  }
  await send();
  for (const chunk of underWay) await write(chunk);
  return { asked, failed, met };
};

import { pathToFileURL } from 'node:url';
import type { Advisor } from '../../advisor.js';
import { packageFile } from '../../knowledge/read/packageFile.js';
import { answerChunk, type AnsweredChunk, type Chunk } from './answerChunk.js';
import type { Answerer } from './answerLines.js';

/** Answers on this thread, each line as it comes. */
export const onThisThread = (advisor: Advisor): Answerer => ({ answer: async (chunk) => await answerChunk(advisor, chunk), chunkLines: 1, atOnce: 1 });

/** Lines that a thread is given at a time: enough that handing them over costs nothing beside answering them. */
const chunkLines = 200;

/** Answers on several threads; the same lines in the same order. */
export const onThreads = async (jobs: number): Promise<Answerer & { readonly close: () => Promise<void> }> => {
  const { Tinypool } = await import('tinypool');
  const pool = new Tinypool({ filename: pathToFileURL(packageFile('dist/cli/lines/answerThread.js')).href, name: 'answer', minThreads: jobs, maxThreads: jobs, isolateWorkers: false });
  return { answer: async (chunk: Chunk) => (await pool.run(chunk)) as AnsweredChunk, chunkLines, atOnce: 2 * jobs, close: async () => { await pool.destroy(); } };
};

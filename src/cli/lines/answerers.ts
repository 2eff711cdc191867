import { pathToFileURL } from 'node:url';
import type { Advisor } from '../../advisor.js';
import { packageFile } from '../../knowledge/read/packageFile.js';
import { answerChunk, type AnsweredChunk, type Chunk } from './answerChunk.js';
import type { Answerer } from './answerLines.js';

/** Answers on this thread, each line as it comes. */
export const onThisThread = (advisor: Advisor): Answerer => ({ answer: async (chunk) => await answerChunk(advisor, chunk), chunkLines: 1, atOnce: 1 });

/** Lines that a thread is given at a time: enough that handing them over costs nothing beside answering them, few enough that a batch told to stop does so soon. */
const chunkLines = 50;

/**
 * What a thread may hold of what has just been made, MB: three times 4. Left to itself it is 48, and most of that is held for nothing: what lives on is some 30 MB,
 * and the time that is spent on collecting it oftener was not to be told from none (20,000 lines on two threads: 25.8 s of processor against 24.7 to 27.2).
 */
const resourceLimits = { maxYoungGenerationSizeMb: 12 };

/** Answers on several threads; the same lines in the same order. */
export const onThreads = async (jobs: number): Promise<Answerer & { readonly close: () => Promise<void> }> => {
  const { Tinypool } = await import('tinypool');
  const pool = new Tinypool({ filename: pathToFileURL(packageFile('dist/cli/lines/answerThread.js')).href, name: 'answer', minThreads: jobs, maxThreads: jobs, isolateWorkers: false, resourceLimits });
  return { answer: async (chunk: Chunk) => (await pool.run(chunk)) as AnsweredChunk, chunkLines, atOnce: 2 * jobs, close: async () => { await pool.destroy(); } };
};

import { createReadStream } from 'node:fs';
import type { Advisor } from '../../advisor.js';
import { SparebudError } from '../../knowledge/error.js';
import { mustBeFile } from '../readProposals.js';
import type { LineOptions } from './answerChunk.js';
import { onThisThread, onThreads } from './answerers.js';
import { type Answered, answerLines } from './answerLines.js';
import { keepHeapSmall } from './keepHeapSmall.js';
import { rateOn } from './rate.js';
import { type Stopped, stopOnSignals } from './stopOnSignals.js';

/** `sparebud ask --lines`: a batch from a file or standard input, on this thread or several, and how fast it was. */
export const askLines = async (advisor: Advisor, what: string, { jobs, ...options }: LineOptions & { readonly jobs?: number }): Promise<Answered & { readonly stopped: Stopped | undefined }> => {
  mustBeFile(what);
  keepHeapSmall();
  const stop = stopOnSignals();
  const threads = jobs === undefined || jobs === 1 ? undefined : await onThreads(jobs);
  const rate = rateOn(process.stderr);
  const input = what === '-' ? process.stdin : createReadStream(what);
  const unread: Error[] = [];
  input.on('error', (cause: Error) => { unread.push(cause); });
  let answered: Answered;
  try {
    answered = await answerLines(threads ?? onThisThread(advisor), options, input, process.stdout, rate.progress, stop.signal);
  } catch (cause) {
    if (!unread.includes(cause as Error)) throw cause;
    throw new SparebudError([{ code: 'missing', path: what, message: `\`${what}\` cannot be read: ${(cause as Error).message}`, help: 'name a file of one JSON proposal a line, or - for standard input' }]);
  } finally {
    await threads?.close();
  }
  const stopped = stop.stopped();
  rate.end(answered.asked, answered.failed, stopped?.by);
  return { ...answered, stopped };
};

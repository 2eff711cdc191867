import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { packageFile } from '../../knowledge/read/packageFile.js';
import type { Station } from '../../season/station.js';
import type { Proposal } from '../corpus.js';
import { type Shift, shiftBetween } from './shiftBetween.js';

/** What one thread is given to do. */
export interface Part {
  readonly before: Knowledge;
  readonly after: Knowledge;
  readonly stations: readonly Station[];
  readonly proposals: readonly Proposal[];
}

/** A thread takes two seconds to start: so few proposals are not worth one. */
const worthAThread = 5000;

const inThread = async (part: Part): Promise<Shift> =>
  await new Promise((resolve, reject) => {
    const worker = new Worker(packageFile('dist/upkeep/shift/shiftThread.js'), { workerData: part });
    worker.once('message', resolve);
    worker.once('error', reject);
  });

const added = (parts: readonly Readonly<Record<string, number>>[]): Readonly<Record<string, number>> => {
  const sum: Record<string, number> = {};
  for (const part of parts) for (const [id, count] of Object.entries(part)) sum[id] = (sum[id] ?? 0) + count;
  return sum;
};

/** `shiftBetween` on as many processors as there are; the answer is the same on any number of them. */
export const shiftInParts = async ({ before, after, stations, proposals }: Part): Promise<Shift> => {
  const threads = Math.min(availableParallelism(), 8, Math.floor(proposals.length / worthAThread));
  /* Uncompiled, a thread would need a loader of its own. */
  if (threads <= 1 || import.meta.url.endsWith('.ts')) return await shiftBetween(before, after, stations, proposals);
  const cut = (i: number): number => Math.floor((i * proposals.length) / threads);
  const parts = await Promise.all(Array.from({ length: threads }, async (_, i) => await inThread({ before, after, stations, proposals: proposals.slice(cut(i), cut(i + 1)) })));
  return {
    ...parts[0]!,
    proposals: proposals.length,
    shifted: parts.flatMap((part) => part.shifted),
    otherReasons: added(parts.map((part) => part.otherReasons)),
    newly: added(parts.map((part) => part.newly)),
    noLonger: added(parts.map((part) => part.noLonger)),
  };
};

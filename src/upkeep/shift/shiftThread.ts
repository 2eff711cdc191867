import { parentPort, workerData } from 'node:worker_threads';
import { shiftBetween } from './shiftBetween.js';
import type { Part } from './shiftInParts.js';

/* One thread of `shiftInParts`. */
const { before, after, stations, proposals } = workerData as Part;
// oxlint-disable-next-line unicorn/require-post-message-target-origin -- a thread, not a window
parentPort!.postMessage(await shiftBetween(before, after, stations, proposals));

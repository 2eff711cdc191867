/* Cuts proposals, one a line on standard input, into batches; stores each batch and queues its name: node produce.mjs < proposals.jsonl */
import { createHash } from 'node:crypto';
import { createInterface } from 'node:readline';
import { Queue } from 'bullmq';
import { connection, queueName } from './queue.mjs';
import { put } from './store.mjs';

const batchLines = Number(process.env.BATCH_LINES ?? 10_000);
const redis = connection();
const queue = new Queue(queueName, { connection: redis });

/* The id tells which lines they are and what stands in them: the same input gives the same ids, and the queue takes an id once. */
const send = async (lines, first) => {
  const text = `${lines.join('\n')}\n`;
  const batch = `lines-${String(first).padStart(10, '0')}-${createHash('sha256').update(text).digest('hex').slice(0, 12)}`;
  await put(`batches/${batch}.jsonl`, text);
  await queue.add('answer', { batch, first }, { jobId: batch, attempts: 3, backoff: { type: 'exponential', delay: 1000 } });
  process.stdout.write(`${batch}\n`);
};

let lines = [];
let first = 1;
for await (const line of createInterface({ input: process.stdin, crlfDelay: Infinity })) {
  lines.push(line);
  if (lines.length < batchLines) continue;
  await send(lines, first);
  first += lines.length;
  lines = [];
}
if (lines.length > 0) await send(lines, first);
await queue.close();
await redis.quit();

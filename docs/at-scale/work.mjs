/* Answers batches until it is told to stop (SIGTERM), then ends the one in hand: node work.mjs, once for each processor of each machine. */
import { setImmediate } from 'node:timers/promises';
import { Worker } from 'bullmq';
import { createAdvisor, SparebudError } from 'sparebud';
import { knowledge } from 'sparebud/knowledge';
import { places } from 'sparebud/places';
import { connection, queueName } from './queue.mjs';
import { get, put } from './store.mjs';

const advisor = createAdvisor(knowledge, { places });

/* A line that cannot be understood is no reason to try the batch again: it would be as bad the second time. */
const answerTo = async (line) => {
  try {
    const proposal = JSON.parse(line);
    const { verdict, range, settled } = await advisor.verdict(proposal);
    return { id: proposal.id ?? null, verdict, range, settled, meta: proposal.meta };
  } catch (cause) {
    if (cause instanceof SparebudError) return { error: { code: cause.code, issues: cause.issues } };
    if (cause instanceof SyntaxError) return { error: { code: 'bad-json', issues: [] } };
    throw cause;
  }
};

const text = (rows) => rows.map((row) => `${JSON.stringify(row)}\n`).join('');

const answerBatch = async ({ data: { batch, first } }) => {
  const answers = [];
  const bad = [];
  const lines = (await get(`batches/${batch}.jsonl`)).trimEnd().split('\n');
  for (const [i, line] of lines.entries()) {
    /* Answers never wait for anything; without a pause the worker could not tell the queue that it is still at it. */
    if (i % 10 === 0) await setImmediate();
    if (line.trim() === '') continue;
    const answer = await answerTo(line);
    if (answer.error === undefined) answers.push(answer);
    else bad.push({ line: first + i, ...answer });
  }
  await put(`answers/${batch}.jsonl`, text(answers));
  await put(`bad/${batch}.jsonl`, text(bad));
  return { knowledge: `${knowledge.version}+${knowledge.hash.slice(0, 7)}`, answered: answers.length, bad: bad.length };
};

/* A worker that says nothing for so long is taken to be gone, and its batch is given to another. */
const silentMs = Number(process.env.SILENT_MS ?? 30_000);
const redis = connection();
const worker = new Worker(queueName, answerBatch, { connection: redis, lockDuration: silentMs, stalledInterval: silentMs });
worker.on('completed', ({ id, returnvalue }) => process.stdout.write(`${id}: ${returnvalue.answered} answered, ${returnvalue.bad} bad\n`));
worker.on('failed', (job, cause) => process.stderr.write(`${job?.id}: ${cause.message}\n`));
worker.on('error', (cause) => process.stderr.write(`${cause.message}\n`));
process.once('SIGTERM', async () => {
  await worker.close();
  await redis.quit();
});

import { Redis } from 'ioredis';

/** The queue that producer and workers share. */
export const queueName = 'answer-batches';

/** A connection to the Redis-compatible server that REDIS names: a URL, or the path of a socket. */
export const connection = () => new Redis(process.env.REDIS ?? 'redis://127.0.0.1:6379', { maxRetriesPerRequest: null });

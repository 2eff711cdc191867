import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';

/* One seed for every run of the tests, so that they say the same of the same code; `npm run laws` draws anew each time. Two threads at the least: left alone, two cores would get one. */
const config = { root: fileURLToPath(new URL('..', import.meta.url)), test: { isolate: false, maxWorkers: Math.max(2, availableParallelism() - 1), testTimeout: 120_000, setupFiles: ['tests/seed.ts'], include: ['tests/**/*.test.ts'] } };

export default config;

/** How many times as many cases as in CI: `npm run laws`. */
const times = Number(process.env['LAWS'] ?? 1);

/** How many cases a law is tried on: few in CI, multiplied by LAWS (`LAWS=100 npm run laws`). */
export const cases = (few: number): number => Math.round(few * times);

/** How long a law may take, ms: what is enough in CI, and as many times as long as there are more cases. */
export const patience = (ms: number): number => ms * times;

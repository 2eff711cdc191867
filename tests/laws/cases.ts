/** How many cases a law is tried on: few in CI, multiplied by LAWS (`LAWS=100 npm run laws`). */
export const cases = (few: number): number => Math.round(few * Number(process.env['LAWS'] ?? 1));

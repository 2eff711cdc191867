import type { Judged } from '../../src/advice/judge.js';
import { readyFor } from '../../src/advice/ready.js';
import type { Knowledge } from '../../src/knowledge/knowledge.js';
import type { Station } from '../../src/season/station.js';

/** Judges proposals without the advice around the verdict: what an assessment's verdict, range and findings are made from. */
export const judgeWith = (knowledge: Knowledge, stations: readonly Station[]): ((written: unknown) => Promise<Judged>) => {
  const ready = readyFor(knowledge, stations);
  return async (written) => await (await ready(written)).judge();
};

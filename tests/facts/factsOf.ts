import type { Read } from '../../src/facts/asked.js';
import { judgeWith } from '../laws/judged.js';
import { shipped, stations } from '../shipped.js';

const judge = judgeWith(shipped, stations);

/** What is known of a proposal, fact by fact. */
export const factsOf = async (proposal: unknown): Promise<Read> => (await judge(proposal)).facts.read;

import { createAdvisor } from '../../advisor.js';
import { knowledge } from '../../knowledge/bundled.js';
import { places } from '../../season/places.js';
import { type AnsweredChunk, answerChunk, type Chunk } from './answerChunk.js';

const advisor = createAdvisor(knowledge, { places });

/** What each thread of `ask --lines --jobs` runs: an advisor of its own, asked a chunk at a time. */
export const answer = async (chunk: Chunk): Promise<AnsweredChunk> => await answerChunk(advisor, chunk);

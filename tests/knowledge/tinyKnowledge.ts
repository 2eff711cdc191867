import { readKnowledge } from '../../src/knowledge/read/readKnowledge.js';
import { tinyFolder } from './tinyFolder.js';

/** A small body of knowledge of invented trees. */
export const tinyKnowledge = readKnowledge(tinyFolder());

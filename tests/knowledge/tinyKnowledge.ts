import { readKnowledge } from '../../src/knowledge/read/readKnowledge.js';
import { removeTinyFolders, tinyFolder } from './tinyFolder.js';

/** A small body of knowledge of invented trees. */
export const tinyKnowledge = readKnowledge(tinyFolder());
removeTinyFolders();

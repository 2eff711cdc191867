export { readKnowledge } from './readKnowledge.js';

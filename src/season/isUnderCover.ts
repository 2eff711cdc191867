import type { Standing } from './seasonTraits.js';

/** Whether glass or a roof stands between the tree and the season. */
export const isUnderCover = (standing: Standing): boolean => standing !== 'outdoors' && standing !== 'cold-frame';

import { nearest } from './nearest.js';

/** As many as a person still looks through. */
const mostTold = 50;

/** What an issue names as accepted in the place of what was found: all there is, or of a long list the nearest. */
export const acceptedFor = (found: unknown, all: readonly string[]): readonly string[] => (all.length <= mostTold ? all : typeof found === 'string' ? nearest(found, all, 12) : []);

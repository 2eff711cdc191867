import { freeze } from './freeze.js';
import type { Knowledge } from './knowledge.js';
import { text } from './bundled.data.js';

/** The knowledge that comes with the package: flat, validated when it was built, frozen. */
export const knowledge: Knowledge = freeze(JSON.parse(text) as Knowledge);

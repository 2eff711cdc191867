import type { Past } from '../asked.js';
import { historyFacts } from './historyFacts.js';
import { ofLogged } from './ofLogged.js';
import { sittingFacts } from './sittingFacts.js';
import { strainFacts } from './strainFacts.js';

/** All that is worked out of what was done to a tree before. */
export const past: Past = { facts: { ...historyFacts, ...sittingFacts, ...strainFacts }, ofLogged };

import type { Proposal } from '../../contract/types.generated.js';
import type { Built } from '../asked.js';
import { bearsMm } from './bearsMm.js';
import { branchNamed } from './branchAsked.js';
import { cutFacts } from './cutFacts.js';
import { goesAnyway } from './goneInSitting.js';
import { levelFacts } from './levelFacts.js';
import { structureAsked } from './structureAsked.js';

/**
 * The tree as its owner told that it is built, with all that is worked out of it.
 *
 * @throws SparebudError where the structure cannot be, or has no such branch
 */
export const builtOf = (proposal: Proposal): Built => ({ structure: structureAsked(proposal), facts: { ...cutFacts, ...levelFacts }, bearsMm, branchNamed, goesAnyway });

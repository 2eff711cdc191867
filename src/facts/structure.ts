import type { Derive } from './asked.js';
import { known } from './factValue.js';

/** Facts of the tree as it is built, where its structure was not told. */
export const structureFacts: Readonly<Record<string, Derive>> = {
  'aim.style': (_, { proposal }) => known(proposal.tree.aim?.style ?? 'untold', 'given'),
  'structure.role': () => known('undecided', 'given'),
  'structure.isTrunk': () => known(false, 'given'),
  'structure.faults': () => known([], 'worked-out'),
};

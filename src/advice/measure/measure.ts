import type { Message } from '../../contract/types.generated.js';
import { checkProposal } from '../../knowledge/checkProposal.js';
import { SparebudError } from '../../knowledge/error.js';
import { findSpecies } from '../../knowledge/findSpecies.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { readStructure } from '../../structure/readStructure.js';
import { branchEntries } from './branchEntries.js';
import type { Entry } from './entry.js';
import { levelEntries } from './levelEntries.js';
import { trunkEntries } from './trunkEntries.js';
import { wishesOf } from './wishes.js';

/** A structure as it is read: what it shows in numbers and words, and what would tell most next. */
export interface Measures {
  readonly schema: 'measures/1';
  readonly species: string;
  readonly entries: readonly Entry[];
  readonly wishes: readonly Message[];
}

/**
 * What the told structure of a tree shows, before any work is asked about.
 *
 * @param written an object with `tree`, its structure told
 * @throws SparebudError where the tree cannot be understood, its structure cannot be, or none is told
 */
export const measuresOf = (written: unknown, knowledge: Knowledge): Measures => {
  const { tree } = checkProposal({ tree: (written as { readonly tree?: unknown } | null)?.tree, operation: { op: Object.keys(knowledge.operations)[0] } }, knowledge);
  if (tree.structure === undefined && tree.trunk === undefined) throw new SparebudError([{ code: 'missing', path: 'tree.structure', message: '`structure` is missing in `tree`', help: 'tell trunks, branches or wounds; a height is enough to begin with' }]);
  const structure = readStructure(tree.structure ?? {}, tree);
  const found = findSpecies(knowledge, tree.species);
  const species = found.kind === 'found' ? found.species : undefined;
  return {
    schema: 'measures/1',
    species: species?.name ?? tree.species,
    entries: [...trunkEntries(structure, tree, knowledge), ...branchEntries(structure, knowledge), ...levelEntries(structure, tree.aim ?? {}, species?.traits['form.whorls']?.is === 'marked', knowledge)],
    wishes: wishesOf(structure, tree, knowledge),
  };
};

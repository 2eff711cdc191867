import { freeze } from '../freeze.js';
import type { Knowledge } from '../knowledge.js';
import { text } from './common.data.js';
import type { FoldedCommon, FoldedGroup, SpeciesGroup } from './folded.js';
import { unfold } from './unfold.js';

export type { SpeciesGroup } from './folded.js';

/** The traits are parsed when the first tree of the group is asked about. */
const foldedOf = ({ names, traits }: SpeciesGroup): FoldedGroup => ({ ...(JSON.parse(names) as Omit<FoldedGroup, 'traits'>), get traits() { return JSON.parse(traits) as FoldedGroup['traits']; } });

/**
 * Knowledge of some groups of species alone, with all rules.
 *
 * Use it in an app that is about a few kinds of trees, and need not carry the others; `sparebud/knowledge` has all.
 * @param groups each from `sparebud/knowledge/groups/<id>`; the ids are the names of species/groups
 * @example
 * import { knowledgeOf } from 'sparebud/knowledge/groups';
 * import { group as pines } from 'sparebud/knowledge/groups/single-flush-pine';
 * const advisor = createAdvisor(knowledgeOf(pines));
 */
export const knowledgeOf = (...groups: readonly SpeciesGroup[]): Knowledge =>
  freeze(unfold(JSON.parse(text) as FoldedCommon, Object.fromEntries(groups.map((group) => [group.id, foldedOf(group)]))));

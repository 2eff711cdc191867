import type { Knowledge, Trait } from '../../knowledge/knowledge.js';
import { traitText } from '../../knowledge/traitText.js';
import { valueText } from './valueText.js';

/** The value of a trait with its unit, as a grower reads it. */
export const shownTrait = (name: string, trait: Trait, knowledge: Knowledge): string => {
  const word = knowledge.facts[`species.${name}`];
  const { is, either } = trait;
  if (either !== undefined) return `${either.map((value) => valueText(value, word, knowledge)).join(' or ')} (sources disagree)`;
  if (!Array.isArray(is)) return valueText(is, word, knowledge);
  /* No value at all, or records of several members. */
  if (is.length === 0 || typeof is[0] === 'object') return traitText(trait);
  return is.map((value) => valueText(value, word, knowledge)).join(typeof is[0] === 'number' ? ' to ' : ', ');
};

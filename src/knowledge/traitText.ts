import type { Trait } from './knowledge.js';

/** The value of a trait as a person reads it, without its unit. */
export const traitText = (trait: Trait): string => {
  if (trait.either !== undefined) return `${trait.either.join(' or ')} (sources disagree)`;
  const { is } = trait;
  if (Array.isArray(is)) return is.length === 0 ? 'none' : is.map((each) => (typeof each === 'object' ? Object.values(each as object).join(', ') : String(each))).join(is.every((each) => typeof each === 'number') ? ' to ' : ', ');
  return String(is);
};

import type { Trait } from './knowledge.js';

/** The value of a trait as a person reads it, with its unit where that is named. */
export const traitText = (trait: Trait, unit?: string): string => {
  const its = unit === undefined ? '' : ` ${unit}`;
  if (trait.either !== undefined) return `${trait.either.join(' or ')}${its} (sources disagree)`;
  const { is } = trait;
  if (Array.isArray(is)) return is.length === 0 ? 'none' : `${is.map((each) => (typeof each === 'object' ? Object.values(each as object).join(', ') : String(each))).join(is.every((each) => typeof each === 'number') ? ' to ' : ', ')}${its}`;
  return `${String(is)}${its}`;
};

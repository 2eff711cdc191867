import type { FactWord } from '../../knowledge/knowledge.js';
import { membersOf } from '../../knowledge/schemas/valueSchema.js';

/** What a fact or trait means, and what it may be, on one line. */
export const factLine = (fact: FactWord, facts: Readonly<Record<string, FactWord>>): string => {
  /* "Share of roots, in share": there the meaning says the unit. */
  const unit = fact.unit === undefined || fact.meaning.startsWith(`${fact.unit} `) ? '' : `, in ${fact.unit}`;
  const members = membersOf(fact, facts);
  const may = members.length > 0 ? `${fact.type === 'list' ? 'any of ' : ''}${members.join(', ')}` : fact.type === 'boolean' ? 'true, false' : fact.bounds === undefined ? '' : `${fact.bounds[0]} to ${fact.bounds[1]}`;
  return `${fact.meaning}${unit}${may === '' ? '' : ` (${may})`}`;
};

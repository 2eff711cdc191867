import { flatten } from '../knowledge/flatten.js';
import type { Issue } from '../knowledge/error.js';
import { readParts } from '../knowledge/read/readKnowledge.js';
import { vanishedIds } from './vanishedIds.js';
import { vetRules } from './vetRules.js';

export interface Vetted {
  readonly issues: readonly Issue[];
  readonly species: number;
  readonly rules: number;
  readonly sources: number;
}

/** Checks a folder of knowledge: each file by its schema, what holds between files, and what the rules really do. */
export const vet = async (root: string): Promise<Vetted> => {
  const { parts, issues, files } = readParts(root);
  const counts = { species: parts.species.size, rules: parts.rules.size, sources: Object.keys(parts.sources).length };
  if (issues.length > 0) return { issues, ...counts };
  const knowledge = flatten(parts);
  const faults = [...vanishedIds(root, knowledge), ...(await vetRules(knowledge))];
  const placed = faults.map(({ at, ...fault }): Issue => ({ ...fault, ...(files.get(fault.file)?.at(at) ?? { line: 1, col: 1 }) }));
  return { issues: placed, ...counts };
};


import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { flatten } from '../knowledge/flatten.js';
import type { Fault } from '../knowledge/check.js';
import type { Issue } from '../knowledge/error.js';
import { readParts } from '../knowledge/read/readKnowledge.js';
import { unfinished } from './house/unfinished.js';
import { vetRuleHouse } from './house/vetRuleHouse.js';
import { vetSpeciesHouse } from './house/vetSpeciesHouse.js';
import { vanishedIds } from './vanishedIds.js';
import { vetRules } from './vetRules.js';
import { vetWording } from './wording/vetWording.js';

export interface Vetted {
  readonly issues: readonly Issue[];
  readonly species: number;
  readonly rules: number;
  readonly sources: number;
}

/** Checks a folder of knowledge: each file by its schema, what holds between files, how they are written, and what the rules really do. */
export const vet = async (root: string): Promise<Vetted> => {
  const { parts, issues, files } = readParts(root);
  const counts = { species: parts.species.size, rules: parts.rules.size, sources: Object.keys(parts.sources).length };
  const place = ({ at, ...fault }: Fault): Issue => ({ ...fault, ...(files.get(fault.file)?.at(at) ?? { line: 1, col: 1 }) });
  /* What a file leaves to be written upsets its other checks: it comes first, and alone. */
  const begun = [...files.keys()].filter((file) => file !== 'shared/published.yaml').flatMap((file) => unfinished(file, readFileSync(join(root, file), 'utf8')));
  const others = issues.filter(({ file }) => !begun.some((fault) => fault.file === file));
  if (begun.length > 0 || issues.length > 0) return { issues: [...others, ...begun.map(place)], ...counts };
  const knowledge = flatten(parts);
  const written = vetRuleHouse(knowledge);
  const misread = new Set(written.filter(({ at }) => at[0] === 'when' || at[0] === 'unless').map(({ file }) => file));
  const faults = [...vanishedIds(root, knowledge), ...vetSpeciesHouse(parts), ...written, ...vetWording(knowledge, files), ...(await vetRules(knowledge, misread))];
  return { issues: faults.map(place), ...counts };
};

import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import type { Knowledge, Verdict } from '../knowledge/knowledge.js';
import type { Station } from '../season/station.js';
import { corpus, type Proposal } from './corpus.js';
import { plainCorpus } from './plainCorpus.js';

/** A known case: a proposal, and the verdicts that its source accepts. */
export interface KnownCase {
  readonly id: string;
  readonly proposal: Proposal;
  readonly accept: readonly Verdict[];
}

export const stationsIn = (root: string): readonly Station[] => (JSON.parse(readFileSync(join(root, 'shared/places.json'), 'utf8')) as { readonly stations: readonly Station[] }).stations;

/** The known cases of a folder; none where it keeps none. */
export const casesIn = (root: string): readonly KnownCase[] => {
  const path = join(root, 'tests/cases/cases.jsonl');
  return existsSync(path) ? readFileSync(path, 'utf8').trim().split('\n').map((line) => JSON.parse(line) as KnownCase) : [];
};

/** The known cases, and proposals over every species, operation and month: what the knowledge is looked at as a whole with. */
export const wholeCorpus = (root: string, knowledge: Knowledge): readonly Proposal[] => [...casesIn(root).map(({ proposal }) => proposal), ...corpus(knowledge, join(root, 'tests/corpus.yaml'))];

const speciesIn = (proposal: Proposal): string => (proposal['tree'] as { readonly species: string }).species;

/**
 * What two states of the knowledge are compared with: the known cases, ordinary proposals, and a quarter of those in which anything may be the matter.
 * Those of a species stand together, so that its seasons and the rules that are left for it are worked out once.
 */
export const shiftCorpus = (root: string, knowledge: Knowledge): readonly Proposal[] => {
  const path = join(root, 'tests/corpus.yaml');
  const every = [...casesIn(root).map(({ proposal }) => proposal), ...plainCorpus(knowledge, path), ...corpus(knowledge, path).filter((_, i) => i % 4 === 0)];
  return every.sort((a, b) => (speciesIn(a) < speciesIn(b) ? -1 : speciesIn(a) > speciesIn(b) ? 1 : 0));
};

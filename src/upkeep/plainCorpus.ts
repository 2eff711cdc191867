import { readFileSync } from 'node:fs';
import { parse } from 'yaml';
import type { Knowledge } from '../knowledge/knowledge.js';
import type { Proposal } from './corpus.js';

const vigours = ['weak', 'steady', 'strong'] as const;

/**
 * Ordinary proposals over every species, operation and month: each operation in its usual ways, on a tree of which only the vigour is told, at the places of tests/corpus.yaml.
 * Vigours, ways and places take turns, so that each way meets each vigour; every other month of each species and operation is asked, the even ones of one, the odd ones of the next.
 */
export const plainCorpus = (knowledge: Knowledge, path: string): readonly Proposal[] => {
  const { year, where } = parse(readFileSync(path, 'utf8')) as { readonly year: number; readonly where: readonly unknown[] };
  const taxa = Object.values(knowledge.species).filter(({ rank }) => rank === 'taxon').map(({ id }) => id);
  return Object.values(knowledge.operations).flatMap(({ id: op, usual }, i) =>
    taxa.flatMap((species, j) => Array.from({ length: 6 }, (_, k): Proposal => {
      const month = 2 * k + ((i + j) % 2);
      const turn = i + j + k;
      return {
        tree: { species, vigour: vigours[turn % 3]! },
        operation: { op, ...usual[(Math.floor(j / vigours.length) + k) % usual.length] },
        date: `${year}-${String(month + 1).padStart(2, '0')}-15`,
        where: where[(j * 5 + Math.floor(j / where.length) + k) % where.length],
      };
    })),
  );
};

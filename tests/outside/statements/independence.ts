import { shipped } from '../../shipped.js';
import type { Support } from './decidedBy.js';
import type { Statement } from './statement.js';

/** How far a check stands apart from what it checks, from the strongest to the weakest. */
export const kinds = ['independent', 'other source', 'shared', 'own source'] as const;
export type Kind = (typeof kinds)[number];

/** Reckons from the sources alone: `independent`, nothing that decides cites the statement's sources; `other source`, whatever cites them also cites a read source that
 * the statement names in `restsOn` and that bears it out; `shared`, they are cited beside others; `own source`, nothing else published decides. */
export const independence = (statement: Statement, supports: readonly Support[]): Kind => {
  const own = (id: string): boolean => statement.sources.includes(id);
  const tied = supports.filter((one) => one.sources.some(own));
  if (tied.length === 0) return 'independent';
  const bears = (id: string): boolean => !own(id) && (statement.restsOn ?? []).includes(id) && shipped.sources[id]?.from === 'read';
  if (tied.every((one) => one.sources.some(bears))) return 'other source';
  return supports.some((one) => one.sources.some((id) => !own(id))) ? 'shared' : 'own source';
};

import type { Proposal } from '../contract/types.generated.js';
import { askedErrors } from './askedErrors.js';
import { type Issue, SparebudError } from './error.js';
import { schemaIssues } from './schemaIssues.js';
import { collectionSchema } from './schemas/collectionSchema.js';
import type { Knowledge } from './knowledge.js';

/** A tree of a collection, at a place of its own or that of the collection. */
export interface CollectedTree {
  readonly id: string;
  readonly where?: Proposal['where'];
  readonly tree: Proposal['tree'];
}

export interface Collection {
  readonly where?: Proposal['where'];
  readonly trees: readonly CollectedTree[];
}

/** The tree that an issue is about, by its place in the list. */
const treeOf = (issue: Issue): number | undefined => {
  const at = /^trees\[(\d+)\]/.exec(issue.path);
  return at === null ? undefined : Number(at[1]);
};

/**
 * The trees of a collection that can be understood, and what is wrong with the others.
 *
 * @throws SparebudError where the collection itself cannot be understood
 */
export const checkCollection = (written: unknown, knowledge: Knowledge): { readonly trees: readonly CollectedTree[]; readonly wrong: ReadonlyMap<string, readonly Issue[]> } => {
  const issues = schemaIssues(askedErrors(written, knowledge, 'collection', collectionSchema));
  const own = issues.filter((issue) => treeOf(issue) === undefined);
  if (own.length > 0) throw new SparebudError(own);
  const { where, trees } = written as Collection;
  const wrong = new Map<string, Issue[]>();
  const said = new Set<string>();
  const sound: CollectedTree[] = [];
  trees.forEach((each, i) => {
    const id = typeof each?.id === 'string' ? each.id : `trees[${i}]`;
    const found = issues.filter((issue) => treeOf(issue) === i);
    if (found.length === 0 && said.has(id)) found.push({ code: 'duplicate', path: `trees[${i}].id`, message: `\`${id}\` is the id of two trees`, found: id, help: 'give each tree an id of its own' });
    said.add(id);
    if (found.length > 0) wrong.set(wrong.has(id) ? `${id} (trees[${i}])` : id, found);
    else sound.push(each.where === undefined && where !== undefined ? { ...each, where } : each);
  });
  return { trees: sound, wrong };
};

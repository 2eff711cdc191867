import type { Proposal } from '../contract/types.generated.js';
import { askedErrors } from './askedErrors.js';
import { checkProposal, noSuchDay } from './checkProposal.js';
import { SparebudError } from './error.js';
import type { Knowledge } from './knowledge.js';
import { schemaIssues } from './schemaIssues.js';
import { keepersSchema } from './schemas/keepersSchema.js';

/** Which branches of a tree to keep: what is asked. */
export interface KeepersQuestion {
  readonly id?: string | number;
  readonly tree: Proposal['tree'];
  readonly where?: Proposal['where'];
  readonly date: string;
  readonly years?: number;
  readonly ignore?: Proposal['ignore'];
  readonly meta?: Readonly<Record<string, unknown>>;
}

/**
 * A question for keepers: checked, with a structure to choose from; a phase that was told stands in the log, as seen on the date.
 *
 * @throws SparebudError with every issue at once
 */
export const checkKeepers = (written: unknown, knowledge: Knowledge): KeepersQuestion => {
  const errors = askedErrors(written, knowledge, 'keepers', keepersSchema);
  if (errors.length > 0) throw new SparebudError(schemaIssues(errors));
  const question = written as KeepersQuestion;
  const { date, where, tree: told } = question;
  const bad = noSuchDay('date', date);
  if (bad.length > 0) throw new SparebudError(bad);
  const { phase, ...tree } = checkProposal({ tree: told, ...(where === undefined ? {} : { where }), date, operation: { op: 'remove-branch' } }, knowledge).tree;
  if ((tree.structure?.branches ?? []).length === 0) throw new SparebudError([{ code: 'missing', path: 'tree.structure.branches', message: '`branches` is missing in `tree.structure`', help: 'tell the branches that are to be chosen from' }]);
  return { ...question, tree: phase === undefined ? tree : { ...tree, log: [...(tree.log ?? []), { saw: phase, date }] } };
};

import type { Proposal } from '../contract/types.generated.js';
import { askedErrors } from './askedErrors.js';
import { checkProposal, noSuchDay } from './checkProposal.js';
import { type Issue, SparebudError } from './error.js';
import type { Knowledge } from './knowledge.js';
import { schemaIssues } from './schemaIssues.js';
import { planSchema } from './schemas/planSchema.js';

/** Work on one tree in steps, each a date and the operations of one sitting. */
export interface PlanQuestion {
  readonly id?: string | number;
  /** A phase that is told counts as seen on the day of the first step. */
  readonly tree: Proposal['tree'];
  readonly where?: Proposal['where'];
  readonly steps: readonly { readonly date: string; readonly operations: readonly Proposal['operation'][] }[];
  readonly ignore?: Proposal['ignore'];
  readonly meta?: Readonly<Record<string, unknown>>;
}

const placed = (issue: Issue, step: number, operation: number): Issue => {
  const at = `steps[${step}]`;
  const path = issue.path.startsWith('operation') ? `${at}.operations[${operation}]${issue.path.slice('operation'.length)}` : issue.path === 'date' ? `${at}.date` : issue.path;
  return { ...issue, path, message: issue.message.replace(`\`${issue.path}\``, `\`${path}\``) };
};

/**
 * A plan as it will be judged: checked, trade names resolved, its steps in order of time and one a day.
 *
 * @throws SparebudError with every issue of every step at once
 */
export const checkPlan = (written: unknown, knowledge: Knowledge): PlanQuestion => {
  const errors = askedErrors(written, knowledge, 'plan', planSchema);
  const dates = ((written as PlanQuestion | null)?.steps ?? []) as readonly { readonly date?: unknown }[];
  const bad = Array.isArray(dates) ? dates.flatMap((step, i) => (typeof step?.date === 'string' ? noSuchDay(`steps[${i}].date`, step.date) : [])) : [];
  if (errors.length + bad.length > 0) throw new SparebudError([...schemaIssues(errors), ...bad]);
  const plan = written as PlanQuestion;
  const issues = new Map<string, Issue>();
  let tree = plan.tree;
  const days = new Map<string, Proposal['operation'][]>();
  plan.steps.forEach(({ date, operations }, i) => operations.forEach((operation, j) => {
    try {
      const proposal = checkProposal({ tree: plan.tree, ...(plan.where === undefined ? {} : { where: plan.where }), operation, date }, knowledge);
      tree = proposal.tree;
      days.set(date, [...(days.get(date) ?? []), proposal.operation]);
    } catch (cause) {
      if (!(cause instanceof SparebudError)) throw cause;
      for (const issue of cause.issues.map((each) => placed(each, i, j))) issues.set(`${issue.code} ${issue.path}`, issue);
    }
  }));
  if (issues.size > 0) throw new SparebudError([...issues.values()]);
  const asText = (operation: Proposal['operation']): string => JSON.stringify(Object.entries(operation).sort(([a], [b]) => (a < b ? -1 : 1)));
  return {
    ...plan,
    tree,
    steps: [...days].sort(([a], [b]) => (a < b ? -1 : 1)).map(([date, operations]) => ({ date, operations: operations.sort((a, b) => (asText(a) < asText(b) ? -1 : 1)) })),
  };
};

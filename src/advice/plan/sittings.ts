import type { Proposal } from '../../contract/types.generated.js';
import type { PlanQuestion } from '../../knowledge/checkPlan.js';
import { acceptedFor } from '../../knowledge/acceptedFor.js';
import { type Issue, SparebudError } from '../../knowledge/error.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { dayOf } from '../../season/day.js';
import { treeAfter } from './treeAfter.js';

/** One sitting of a plan: each operation as a proposal of its own, on the tree as earlier sittings left it, the rest of the sitting in its log. */
export interface Sitting {
  readonly date: string;
  readonly proposals: readonly Proposal[];
}

const namesOf = ({ structure }: Proposal['tree']): ReadonlySet<string> => new Set([...(structure?.branches ?? []), ...(structure?.trunks ?? [])].map(({ id }) => id));

/** The tree as old as it is on a later day than that on which its age was told. */
const aged = (tree: Proposal['tree'], toldYears: number | undefined, from: string, to: string): Proposal['tree'] =>
  toldYears === undefined ? tree : { ...tree, ageYears: toldYears + Math.floor((dayOf(to) - dayOf(from)) / 365.25) };

/**
 * The sittings of a checked plan, and the tree after the last.
 *
 * @throws SparebudError `impossible` where a step works on a branch that an earlier one took
 */
export const sittingsOf = ({ tree, where, steps, ignore }: PlanQuestion, knowledge: Knowledge): { readonly sittings: readonly Sitting[]; readonly after: Proposal['tree'] } => {
  const sittings: Sitting[] = [];
  const issues: Issue[] = [];
  const told = namesOf(tree);
  let now = tree;
  for (const [step, { date, operations }] of steps.entries()) {
    now = aged(now, tree.ageYears, steps[0]!.date, date);
    const there = namesOf(now);
    operations.forEach(({ branch }, i) => {
      if (branch === undefined || !told.has(branch) || there.has(branch)) return;
      const path = `steps[${step}].operations[${i}].branch`;
      issues.push({ code: 'impossible', path, message: `\`${branch}\` in \`${path}\` is gone by ${date}`, found: branch, accepted: acceptedFor(branch, [...there]), help: 'leave this out, or put it before the step that takes the branch' });
    });
    const proposals = operations.map((operation, i): Proposal => {
      const others = operations.filter((_, j) => j !== i).map((other) => ({ ...other, date }));
      return {
        tree: others.length === 0 ? now : { ...now, log: [...(now.log ?? []), ...others] },
        operation, date,
        ...(where === undefined ? {} : { where }), ...(ignore === undefined ? {} : { ignore }),
      };
    });
    sittings.push({ date, proposals });
    now = treeAfter(now, date, operations, knowledge);
  }
  if (issues.length > 0) throw new SparebudError(issues);
  return { sittings, after: now };
};

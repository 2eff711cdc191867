import type { Proposal } from '../../contract/types.generated.js';
import type { PlanQuestion } from '../../knowledge/checkPlan.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { treeAfter } from './treeAfter.js';

/** One sitting of a plan: each operation as a proposal of its own, on the tree as earlier sittings left it, the rest of the sitting in its log. */
export interface Sitting {
  readonly date: string;
  readonly proposals: readonly Proposal[];
}

/** The sittings of a checked plan, and the tree after the last. */
export const sittingsOf = ({ tree, where, steps, ignore }: PlanQuestion, knowledge: Knowledge): { readonly sittings: readonly Sitting[]; readonly after: Proposal['tree'] } => {
  const sittings: Sitting[] = [];
  let now = tree;
  for (const { date, operations } of steps) {
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
  return { sittings, after: now };
};

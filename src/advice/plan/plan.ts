import type { Assessment, Message, Proposal } from '../../contract/types.generated.js';
import { severity, worse } from '../../engine/verdict.js';
import type { Read } from '../../facts/asked.js';
import { checkPlan, type PlanQuestion } from '../../knowledge/checkPlan.js';
import type { Knowledge, Verdict } from '../../knowledge/knowledge.js';
import { message } from '../message.js';
import type { Ready } from '../ready.js';
import { type Replan, replansOf } from './replans.js';
import { sittingsOf } from './sittings.js';
import { workLabel } from './workLabel.js';

/** What work asks of a tree, in points: what earlier work still asks, what this sitting asks, and both together. */
export interface Strain {
  readonly before: number;
  readonly asks: number;
  readonly sum: number;
}

export interface PlanStep {
  readonly date: string;
  /** The sitting as a whole: its worst verdict and why; foliage, cut surfaces and roots taken together, as far as they are known. */
  readonly sitting: { readonly verdict: Verdict; readonly because: Message; readonly foliageShare?: number; readonly cutAreaShare?: number; readonly rootsRemoved?: number; readonly strain: Strain };
  readonly operations: readonly Assessment[];
}

/** A plan, judged: the worst of its steps, each step on the tree as the steps before it left it, and what would do instead. */
export interface Plan {
  readonly schema: 'plan/1';
  readonly id?: string | number;
  readonly verdict: Verdict;
  readonly because: Message;
  readonly steps: readonly PlanStep[];
  /** The most that is asked of the tree at once, and when. */
  readonly strain: { readonly most: number; readonly on: string };
  readonly treeAfter: Proposal['tree'];
  /** The nearest order, spacing or way that would be judged better: JSON Merge Patches (RFC 7396) of the plan. */
  readonly changes: readonly Replan[];
  readonly meta?: Readonly<Record<string, unknown>>;
}

const most = (values: readonly (number | undefined)[]): number | undefined => {
  const told = values.filter((value) => value !== undefined);
  return told.length === 0 ? undefined : Math.max(...told);
};

/** A number that was told or worked out from what was told, not one that was taken for granted. */
const number = (read: Read, fact: string): number | undefined => {
  const { value, state } = read(fact);
  return typeof value === 'number' && state !== 'assumed' ? value : undefined;
};

/** What a sitting comes to, as each of its operations sees it. */
const sittingOf = (assessments: readonly Assessment[], reads: readonly Read[]): PlanStep['sitting'] => {
  const worst = [...assessments].sort((a, b) => severity(b.verdict) - severity(a.verdict))[0]!;
  const taken = (fact: string): number | undefined => most(reads.map((read) => number(read, fact)));
  const owed = (fact: string): number => Math.max(...reads.map((read) => (read(fact).value as number | undefined) ?? 0));
  const shares = { foliageShare: taken('sitting.foliageShare'), cutAreaShare: taken('sitting.cutAreaShare'), rootsRemoved: taken('roots.shareRemoved') };
  return {
    verdict: worst.verdict,
    because: worst.summary,
    ...Object.fromEntries(Object.entries(shares).filter(([, share]) => share !== undefined && share > 0)),
    strain: { before: owed('history.strain'), asks: owed('sitting.strain'), sum: owed('sitting.strainSum') },
  };
};

/**
 * A plan judged step by step.
 *
 * @throws SparebudError with the issues of every step at once
 */
export const planOf = async (ready: (written: unknown) => Promise<Ready>, assess: (written: unknown) => Promise<Assessment>, knowledge: Knowledge, written: unknown): Promise<Plan> => {
  const question: PlanQuestion = checkPlan(written, knowledge);
  const { sittings, after } = sittingsOf(question, knowledge);
  const steps: PlanStep[] = [];
  for (const { date, proposals } of sittings) {
    const operations: Assessment[] = [];
    const reads: Read[] = [];
    for (const proposal of proposals) {
      operations.push(await assess(proposal));
      reads.push((await (await ready(proposal)).judge()).facts.read);
    }
    steps.push({ date, sitting: sittingOf(operations, reads), operations });
  }
  const verdict = steps.reduce<Verdict>((worst, { sitting }) => worse(worst, sitting.verdict), 'allowed');
  const first = steps.find(({ sitting }) => sitting.verdict === verdict)!;
  const loud = first.operations.find((operation) => operation.verdict === verdict)!;
  const label = workLabel((loud.proposal as unknown as Proposal).operation, knowledge);
  const peak = [...steps].sort((a, b) => b.sitting.strain.sum - a.sitting.strain.sum)[0]!;
  return {
    schema: 'plan/1',
    ...(question.id === undefined ? {} : { id: question.id }),
    verdict,
    because: verdict === 'allowed' ? message(knowledge, 'plan.allowed') : message(knowledge, 'plan.worst', { date: first.date, operation: label, why: loud.summary.text }),
    steps,
    strain: { most: peak.sitting.strain.sum, on: peak.date },
    treeAfter: after,
    changes: verdict === 'allowed' ? [] : await replansOf(ready, assess, knowledge, question),
    ...(question.meta === undefined ? {} : { meta: question.meta }),
  };
};

import type { Message, Proposal } from '../../contract/types.generated.js';
import { severity } from '../../engine/verdict.js';
import { checkPlan } from '../../knowledge/checkPlan.js';
import type { Knowledge, Verdict } from '../../knowledge/knowledge.js';
import { dayOf, isoOf } from '../../season/day.js';
import { findingsOf } from '../findings.js';
import { sittingsOf } from '../plan/sittings.js';
import type { Ready } from '../ready.js';
import { summaryOf } from '../summary.js';
import { bestDay } from './bestDay.js';

type Operation = Proposal['operation'];

/** A sitting, judged as a step of a plan is: on the tree as the sittings before it leave it. */
export interface JudgedStage {
  readonly date: string;
  readonly operations: readonly Operation[];
  readonly verdict: Verdict;
  readonly because: Message;
}

export interface StagesQuestion {
  readonly tree: Proposal['tree'];
  readonly where?: Proposal['where'];
  readonly ignore?: Proposal['ignore'];
  /** The first day on which something may be done. */
  readonly from: string;
  /** Days of growth that a tree is given between two sittings. */
  readonly daysApart: number;
  readonly sittings: readonly (readonly Operation[])[];
}

/**
 * The sittings of a set, each on the first good day once the tree has grown since the one before, and judged by the rules as the steps of one plan.
 *
 * A sitting's day is that of its first operation, the thickest cut: the one that the season matters most for.
 */
export const judgeStages = async (ready: (written: unknown) => Promise<Ready>, knowledge: Knowledge, { tree, where, ignore, from, daysApart, sittings }: StagesQuestion): Promise<readonly JudgedStage[]> => {
  /* Where every branch may stay there is no sitting. */
  if (sittings.length === 0) return [];
  const around = { tree, ...(where === undefined ? {} : { where }), ...(ignore === undefined ? {} : { ignore }) };
  const steps: { readonly date: string; readonly operations: readonly Operation[] }[] = [];
  let earliest = from;
  for (const operations of sittings) {
    const { date } = await bestDay(await ready({ ...around, operation: operations[0]!, date: earliest }), earliest);
    steps.push({ date, operations });
    earliest = isoOf(dayOf(date) + daysApart);
  }
  const planned = sittingsOf(checkPlan({ ...around, steps }, knowledge), knowledge).sittings;
  const stages: JudgedStage[] = [];
  for (const [i, { date, proposals }] of planned.entries()) {
    let worst: Pick<JudgedStage, 'verdict' | 'because'> | undefined;
    for (const proposal of proposals) {
      const { judge, prepared } = await ready(proposal);
      const judged = await judge();
      if (worst === undefined || severity(judged.verdict) > severity(worst.verdict)) worst = { verdict: judged.verdict, because: summaryOf(judged, [...findingsOf(judged, knowledge, prepared.species)], knowledge) };
    }
    stages.push({ date, operations: steps[i]!.operations, ...worst! });
  }
  return stages;
};

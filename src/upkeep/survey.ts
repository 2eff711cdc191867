import type { Advisor } from '../advisor.js';
import { severity } from '../engine/verdict.js';
import type { Verdict } from '../knowledge/knowledge.js';

/** What the knowledge does over many proposals. */
export interface Survey {
  readonly proposals: number;
  readonly verdicts: Readonly<Record<Verdict, number>>;
  readonly unsettled: number;
  readonly byOperation: Readonly<Record<string, Readonly<Record<Verdict, number>>>>;
  /** How often each rule fired for certain, fired possibly, and decided: was the worst of those certain. */
  readonly rules: Readonly<Record<string, { readonly certainly: number; readonly possibly: number; readonly decided: number }>>;
}

const none = (): Record<Verdict, number> => ({ allowed: 0, risky: 0, 'advise-against': 0 });

/** Asks every proposal and counts verdicts and rules. */
export const survey = async (advisor: Advisor, proposals: readonly Readonly<Record<string, unknown>>[]): Promise<Survey> => {
  const verdicts = none();
  const byOperation: Record<string, Record<Verdict, number>> = {};
  const rules = Object.fromEntries(Object.keys(advisor.knowledge.rules).map((id) => [id, { certainly: 0, possibly: 0, decided: 0 }]));
  let unsettled = 0;
  for (const proposal of proposals) {
    const answer = await advisor.verdict(proposal);
    const { op } = proposal['operation'] as { readonly op: string };
    verdicts[answer.verdict]++;
    (byOperation[op] ??= none())[answer.verdict]++;
    if (!answer.settled) unsettled++;
    let worst = -1;
    for (const { rule, verdict, fires } of answer.rules) {
      rules[rule]![fires]++;
      if (fires === 'certainly') worst = Math.max(worst, severity(verdict));
    }
    for (const { rule, verdict, fires } of answer.rules) if (fires === 'certainly' && severity(verdict) === worst) rules[rule]!.decided++;
  }
  return { proposals: proposals.length, verdicts, unsettled, byOperation, rules };
};

import type { Rule, Verdict } from '../knowledge/knowledge.js';
import type { Fired } from './evaluate.js';

const rising: readonly Verdict[] = ['allowed', 'risky', 'advise-against'];

export const severity = (verdict: Verdict): number => rising.indexOf(verdict);
export const worse = (a: Verdict, b: Verdict): Verdict => (severity(a) >= severity(b) ? a : b);

export interface Judgement {
  readonly verdict: Verdict;
  /** Best and worst that the unknown facts still allow. */
  readonly range: readonly [Verdict, Verdict];
  readonly settled: boolean;
}

/** A verdict and its range: the best end, raised to risky where the worst is worse. */
export const ranged = (best: Verdict, worst: Verdict): Judgement => ({ verdict: best === worst ? best : worse(best, 'risky'), range: [best, worst], settled: best === worst });

/**
 * The verdict of the rules that fired: the worst of those that fire for certain, raised to risky where an unknown fact could still make it worse.
 * What rests on an estimate alone is never the ground of a flat advise-against.
 */
export const judgementOf = (fired: readonly Fired<Rule>[]): Judgement => {
  let best: Verdict = 'allowed';
  let worst: Verdict = 'allowed';
  for (const { residual, fires, firm } of fired) {
    worst = worse(worst, residual.rule.verdict);
    if (fires === 'certainly') best = worse(best, firm ? residual.rule.verdict : 'risky');
  }
  return ranged(best, worst);
};

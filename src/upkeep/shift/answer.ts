import type { Fired } from '../../engine/evaluate.js';
import { type Judgement, judgementOf } from '../../engine/verdict.js';
import type { Rule } from '../../knowledge/knowledge.js';

/** An answer as far as two states of the knowledge are compared by it: the judgement, and the rules that it rests on. */
export interface Answer extends Judgement {
  /** Each rule that fires, with how, and with what verdict: `certainly risky`. */
  readonly rules: Readonly<Record<string, string>>;
}

export const answerOf = (fired: readonly Fired<Rule>[]): Answer => ({
  ...judgementOf(fired),
  rules: Object.fromEntries(fired.map(({ residual, fires, firm }) => [residual.rule.id, `${fires === 'certainly' && !firm ? 'by estimate' : fires} ${residual.rule.verdict}`])),
});

/** Rules that fire in one of two answers and not, or not so, in the other. */
export const differing = (before: Answer, after: Answer): readonly string[] =>
  [...new Set([...Object.keys(before.rules), ...Object.keys(after.rules)])].filter((rule) => before.rules[rule] !== after.rules[rule]).sort();

/** `risky`, or `risky, perhaps advise-against` where something unknown could make it worse. */
export const answerText = ({ verdict, range: [best, worst] }: Judgement): string => (best === worst ? verdict : `${verdict} (${best} to ${worst})`);

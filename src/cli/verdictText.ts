import colors from 'picocolors';
import type { Verdict } from '../knowledge/knowledge.js';

/** A mark, a colour and words for each verdict, so that it reads without colour. */
export const verdictMarks: Readonly<Record<Verdict, { readonly mark: string; readonly paint: (text: string) => string }>> = {
  allowed: { mark: 'o', paint: colors.green },
  risky: { mark: '!', paint: colors.yellow },
  'advise-against': { mark: 'x', paint: colors.red },
};

export const verdictWords = (verdict: Verdict): string => verdict.replace('-', ' ');

/** The words of a verdict in its colour. */
export const painted = (verdict: Verdict): string => verdictMarks[verdict].paint(verdictWords(verdict));

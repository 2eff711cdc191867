/// <reference lib="dom" />
import type { Verdict } from 'sparebud';
import { el } from './el.js';

export const verdictWords: Readonly<Record<Verdict, string>> = { allowed: 'allowed', risky: 'risky', 'advise-against': 'advise against' };

/** A verdict in words, in its colour. */
export const verdictMark = (verdict: Verdict): HTMLElement => el('span', { class: `verdict ${verdict}` }, verdictWords[verdict]);

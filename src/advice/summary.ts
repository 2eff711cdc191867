import type { Assessment } from '../contract/types.generated.js';
import type { Judgement } from '../engine/verdict.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { message } from './message.js';

/** One sentence for a row of a list. */
export const summaryOf = (judgement: Judgement, findings: Assessment['findings'], knowledge: Knowledge): Assessment['summary'] => {
  const first = findings[0];
  if (first === undefined) return message(knowledge, 'summary.allowed');
  if (!judgement.settled) {
    const open = [...findings].filter((finding) => finding.fires === 'possibly').sort((a, b) => (a.verdict === b.verdict ? 0 : a.verdict === 'advise-against' ? -1 : 1))[0] ?? first;
    return message(knowledge, 'summary.depends', { title: open.title.text });
  }
  const more = findings.filter((finding) => finding.fires === 'certainly').length - 1;
  return more > 0 ? message(knowledge, 'summary.found-more', { title: first.title.text, count: more }) : message(knowledge, 'summary.found', { title: first.title.text });
};

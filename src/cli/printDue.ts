import colors from 'picocolors';
import type { Due, DueItem } from '../advice/due/due.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { dueTitle } from './dueCalendar.js';
import { hanging } from './page/hanging.js';
import type { Page } from './page/page.js';
import { verdictMarks } from './verdictText.js';

const headings = { overdue: 'Overdue', open: 'Open now', soon: 'Soon' } as const;

/** Items with those of one tree together, in the order in which each tree comes first. */
const byTree = (items: readonly DueItem[]): readonly DueItem[] => [...new Set(items.map(({ tree }) => tree))].flatMap((tree) => items.filter((item) => item.tree === tree));

/** A window in a line: the year once, where both ends are in it. */
const days = ({ from, to }: DueItem['window']): string => `${from} to ${to.startsWith(from.slice(0, 5)) ? to.slice(5) : to}`;

/** What is due for a person: overdue, open, soon, by tree; a line for the work and its days, and why beneath it. */
export const printDue = (due: Due, knowledge: Knowledge, page: Page): string => {
  const out: string[] = [];
  for (const state of ['overdue', 'open', 'soon'] as const) {
    const items = due.items.filter((item) => item.state === state);
    if (items.length === 0) continue;
    out.push(...(out.length === 0 ? [] : ['']), colors.bold(`${headings[state]} (${items.length})`));
    for (const item of byTree(items)) {
      const { mark, paint } = verdictMarks[item.verdict];
      const late = item.since === undefined ? '' : `, late since ${item.since}`;
      out.push(paint(mark) + hanging('  ', `${colors.bold(dueTitle(item, knowledge))}, ${days(item.window)}${late}`, page).slice(1));
      out.push(hanging('  ', colors.dim(item.why.text), page));
    }
  }
  if (due.items.length === 0) out.push(`Nothing is due on ${due.date}${due.unanswered.length === 0 ? '' : ' among the trees that could be answered'}.`);
  for (const { trees, text } of due.untold) out.push('', hanging('i ', `${trees.join(', ')}: ${text.text}`, page));
  return `${out.join('\n')}\n`;
};

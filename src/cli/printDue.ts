import colors from 'picocolors';
import type { Due } from '../advice/due/due.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { dueTitle } from './dueCalendar.js';
import { hanging } from './hanging.js';
import { verdictMarks } from './verdictText.js';

const headings = { overdue: 'Overdue', open: 'Open now', soon: 'Soon' } as const;

/** What is due for a person: overdue, open, soon; one line for the work and its days, one for why. */
export const printDue = (due: Due, knowledge: Knowledge, width: number): string => {
  const out: string[] = [];
  for (const state of ['overdue', 'open', 'soon'] as const) {
    const items = due.items.filter((item) => item.state === state);
    if (items.length === 0) continue;
    out.push(...(out.length === 0 ? [] : ['']), colors.bold(`${headings[state]} (${items.length})`));
    for (const item of items) {
      const { mark, paint } = verdictMarks[item.verdict];
      out.push(hanging(`${paint(mark)} `, `${colors.bold(dueTitle(item, knowledge))}, ${item.window.from} to ${item.window.to}`, width + 8));
      out.push(hanging('  ', colors.dim(item.why.text), width + 8));
    }
  }
  if (due.items.length === 0) out.push(`Nothing is due on ${due.date}.`);
  return `${out.join('\n')}\n`;
};

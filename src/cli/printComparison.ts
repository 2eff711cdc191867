import colors from 'picocolors';
import type { Comparison, Variant } from '../advice/compare.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { hanging } from './page/hanging.js';
import { inUnits, type Units } from './page/inUnits.js';
import type { Page } from './page/page.js';
import { verdictMarks, verdictWords } from './verdictText.js';

interface Column {
  readonly head: string;
  readonly cell: (variant: Variant, units: Units) => string;
}

const span = (range: readonly number[] | undefined): string => (range === undefined ? '' : range[0] === range[1] ? String(range[0]) : `${range[0]}–${range[1]}`);

const verdictCell = ({ verdict, range, settled }: Variant): string => {
  if (verdict === undefined) return 'not answered';
  const ends = settled === true || range === undefined ? '' : ` (${range.map((end) => verdictMarks[end].mark).join(' to ')})`;
  return `${verdictMarks[verdict].mark} ${verdictWords(verdict)}${ends}`;
};

const columns: readonly Column[] = [
  { head: 'verdict', cell: verdictCell },
  { head: 'closes, years', cell: ({ expect }) => span(expect?.closureYears) },
  { head: 'dies back', cell: ({ expect }, units) => (expect?.dieBackMm === undefined ? '' : inUnits(`${span(expect.dieBackMm)} mm`, units)) },
  { head: 'recovers, weeks', cell: ({ expect }) => span(expect?.recoveryWeeks) },
  { head: 'buds back', cell: ({ expect }) => expect?.backBudding ?? '' },
];

/** The findings that a way brings up and is rid of, or why it could not be answered. */
const beneath = (variant: Variant, { rules }: Knowledge, page: Page): readonly string[] => {
  const title = (sign: string) => (id: string): string => hanging(`    ${sign} `, `${rules[id]?.title ?? id} (${id})`, page);
  return [...variant.findingsAdded.map(title('+')), ...variant.findingsGone.map(title('-')), ...(variant.issues ?? []).map((issue) => hanging('    ', issue.message, page))];
};

/** Ways side by side for a terminal: a table of verdicts and what to expect, then the findings gained and lost, then the best and why; it reads without colour. */
export const printComparison = ({ variants, best, why }: Comparison, knowledge: Knowledge, page: Page): string => {
  const told = columns.filter(({ cell }) => variants.some((variant) => cell(variant, page.units) !== ''));
  const widths = told.map(({ head, cell }) => Math.max(head.length, ...variants.map((variant) => cell(variant, page.units).length)));
  const room = Math.max(...variants.map(({ label }) => label.length), 'way'.length);
  const labelWidth = Math.min(room, Math.max(16, page.width - 2 - widths.reduce((sum, each) => sum + each + 2, 0)));
  const row = (bullet: string, label: string, cells: readonly string[]): readonly string[] => {
    /* A label too long for its column stands on a line of its own. */
    const own = label.length > labelWidth ? [hanging(bullet, label, page)] : [];
    const first = own.length > 0 ? ' '.repeat(labelWidth + 2) : `${bullet}${label.padEnd(labelWidth)}`;
    return [...own, `${first}${cells.map((cell, i) => `  ${cell.padEnd(widths[i]!)}`).join('')}`.trimEnd()];
  };
  const out = row('  ', 'way', told.map(({ head }) => head)).map((line) => colors.bold(line));
  for (const variant of variants) out.push(...row(best.includes(variant.label) ? '* ' : '  ', variant.label, told.map(({ cell }) => cell(variant, page.units))));
  for (const variant of variants) {
    const lines = beneath(variant, knowledge, page);
    if (lines.length > 0) out.push('', hanging('  ', `${variant.label}:`, page), ...lines);
  }
  if (variants.some(({ settled }) => settled === false)) out.push('', hanging('', 'In brackets, what is not told still allows: o allowed, ! risky, x advise against.', page));
  out.push('', hanging('', `${best.length === 1 ? 'Best' : 'Tied for best'}: ${best.join('; ')}. ${why.text}`, page));
  return `${out.join('\n')}\n`;
};

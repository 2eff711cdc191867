import colors from 'picocolors';
import type { Keepers, KeepersSet } from '../advice/keepers/keepers.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { hanging } from './page/hanging.js';
import { inUnits } from './page/inUnits.js';
import type { Page } from './page/page.js';
import { verdictMarks, verdictWords } from './verdictText.js';

const cost = (value: number): string => value.toFixed(2);

const stagesText = (set: KeepersSet, page: Page): readonly string[] =>
  set.stages.map(({ date, remove, leader, verdict, because }) => {
    const { mark, paint } = verdictMarks[verdict];
    const what = [...(leader === undefined ? [] : [`trunk cut at ${Math.round(leader.heightMm)} mm, back to ${leader.branch}`]), ...remove].join(', ');
    return hanging(`  ${paint(mark)} ${date}  `, verdict === 'allowed' ? what : `${what} (${verdictWords(verdict)}: ${because.text.replace(/\.$/, '')})`, { ...page, width: page.width + 10 });
  });

type Part = KeepersSet['parts'][number];

/** Parts by their term, the dearest first, each with the branches it is about. */
const partsText = (parts: readonly Part[], { wording }: Knowledge, page: Page): readonly string[] => {
  const terms = [...new Set(parts.map(({ term }) => term))].map((term) => {
    const same = parts.filter((part) => part.term === term).sort((a, b) => b.cost - a.cost);
    return { term, same, sum: same.reduce((sum, part) => sum + part.cost, 0) };
  });
  return terms.sort((a, b) => b.sum - a.sum || (a.term < b.term ? -1 : 1)).map(({ term, same, sum }) =>
    hanging(`  ${cost(sum)}  `, `${wording[`keepers.term.${term}`] ?? term}: ${same.map(({ branches, why }) => [branches.join(' and '), why.text].filter((text) => text !== '').join(' ')).join('; ')}`, page));
};

/** Why each branch goes: what it would be charged for beside those that stay. */
const sparedText = ({ spared }: KeepersSet, { wording }: Knowledge, page: Page): readonly string[] =>
  spared.map(({ branch, parts }) => {
    const why = [...parts].sort((a, b) => b.cost - a.cost).map(({ term, branches, cost: its, why: text }) => {
      const other = branches.find((id) => id !== branch);
      return `${wording[`keepers.term.${term}`] ?? term}${other === undefined ? '' : ` with ${other}`}, ${text.text} (${cost(its)})`;
    });
    return hanging(`  ${branch.padEnd(14)}  `, why.join('; ') || 'dead, or nothing speaks for it beside the others', page);
  });

/** Keepers for a person: the best set, its sittings and what it is charged for, the sets that are as good, and what is kept at a cost. */
export const printKeepers = (keepers: Keepers, knowledge: Knowledge, page: Page): string => {
  const { aim, sets, ties, notices } = keepers;
  const [best] = sets;
  const out: string[] = [];
  out.push(colors.bold(inUnits(aim.text, page.units)), '', hanging('keep    ', best!.keep.join(', ') || '–', page), hanging('take    ', best!.remove.join(', ') || '–', page));
  if (best!.stages.length > 0) out.push('', colors.bold('When'), ...stagesText(best!, page));
  if (best!.spared.length > 0) out.push('', colors.bold('Why they go'), ...sparedText(best!, knowledge, page));
  out.push('', colors.bold(`What this costs: ${cost(best!.cost)} (1 is a fault that most growers would mend)`), ...partsText(best!.parts, knowledge, page));
  if (ties.length > 0) out.push('', colors.bold('About as good'), ...ties.map(({ dearerBy, why }) => hanging(`  +${cost(dearerBy)}  `, why.text, page)));
  if (notices.length > 0) out.push('', ...notices.map((notice) => hanging('i ', notice.text, page)));
  return `${out.join('\n')}\n`;
};

import colors from 'picocolors';
import type { Year } from '../advice/year.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { dayOf } from '../season/day.js';
import { hanging } from './page/hanging.js';
import type { Page } from './page/page.js';
import { verdictMarks } from './verdictText.js';

const phaseMarks: Readonly<Record<string, string>> = { dormant: '.', resting: '.', 'bud-swell': 's', 'bud-burst': 'b', 'leafing-out': 'l', extending: 'e', growing: 'g', 'hardened-off': 'h', turning: 't', 'leaf-fall': 'f' };
const days = 365;

/** A year on a terminal: a strip a line, a mark for some days each; it reads without colour too. */
export const printYear = (year: Year, knowledge: Knowledge, page: Page): string => {
  /* 48 columns, four a month, go beside the labels of a narrow page. */
  const labelWidth = Math.min(44, Math.max(32, page.width - 73), Math.max(...year.operations.map((operation) => operation.label.length), 8) + 2);
  const columns = Math.max(36, Math.min(73, page.width - labelWidth));
  const start = dayOf(year.from);
  const middle = (column: number): number => start + Math.floor(((column + 0.5) * days) / columns);
  const along = (mark: (day: number) => string): string => Array.from({ length: columns }, (_, column) => mark(middle(column))).join('');
  const label = (text: string): string => (text.length > labelWidth - 2 ? `${text.slice(0, labelWidth - 3)}…` : text).padEnd(labelWidth);
  const within = (day: number, run: { readonly from: string; readonly to: string }): boolean => dayOf(run.from) <= day && day <= dayOf(run.to);
  const months = Array.from({ length: columns }, () => ' ');
  for (const { date } of year.daylengthH.length > 0 ? year.daylengthH : Array.from({ length: 12 }, (_, i) => ({ date: `${year.from.slice(0, 4)}-${String(i + 1).padStart(2, '0')}-01` }))) {
    const column = Math.floor(((dayOf(date) - start) * columns) / days);
    [...['Jan', 'Feb', 'Mar', 'Apr', 'May', 'Jun', 'Jul', 'Aug', 'Sep', 'Oct', 'Nov', 'Dec'][Number(date.slice(5, 7)) - 1]!].forEach((letter, i) => {
      if (column >= 0 && column + i < columns) months[column + i] = letter;
    });
  }
  const line = (text: string, bullet = ''): string => hanging(bullet, text, page);
  const out: string[] = [line(`${colors.bold(year.label)}, ${year.from} to ${year.to}; ${year.where.text}`), '', label('') + months.join('')];
  out.push(label('phase') + along((day) => phaseMarks[year.phases.find((phase) => within(day, phase))?.phase ?? ''] ?? '?'));
  for (const operation of year.operations) {
    out.push(label(operation.label) + along((day) => {
      const run = operation.runs.find((each) => within(day, each));
      return run === undefined ? ' ' : verdictMarks[run.verdict].paint(run.settled ? verdictMarks[run.verdict].mark : '?');
    }));
  }
  const phases = [...new Set(year.phases.map((phase) => phase.phase))].map((phase) => `${phaseMarks[phase] ?? '?'} ${knowledge.phases[phase]?.label ?? phase}`);
  out.push('', line('o allowed   ! risky   x advise against   ? depends on what is not told'), line(phases.length === 0 ? 'phases are not known here' : phases.join('   ')));
  const { frost } = year;
  out.push(line(!frost.reliable && year.phases.length === 0 ? 'frost is not known here' : !frost.reliable ? 'no frost to be relied on' : frost.last === undefined ? 'frost all year' : `frost: last ${frost.last.slice(5)} (one year in ten after ${frost.lastOneInTen?.slice(5) ?? '?'}), first ${frost.first?.slice(5) ?? '?'} (one in ten before ${frost.firstOneInTen?.slice(5) ?? '?'}); at a pot’s rim until ${frost.lastAtRim?.slice(5) ?? '?'}, from ${frost.firstAtRim?.slice(5) ?? '?'}`));
  if (year.daylengthH.length > 0) out.push(line(`daylight, first of each month: ${year.daylengthH.map(({ hours }) => hours.toFixed(1)).join(' ')} h`));
  if (year.chillPortions !== undefined) out.push(line(`chill of an ordinary winter: ${year.chillPortions} portions (Dynamic Model)`));
  for (const notice of year.notices) out.push(line(notice.text, 'i '));
  return `${out.join('\n')}\n`;
};

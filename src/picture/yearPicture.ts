import type { Year } from '../advice/year.js';
import { type Day, dayOf, isoOf } from '../season/day.js';
import { element, escaped, textAt } from './svg.js';

const days = 365;

type Paint = { readonly fill: string; readonly ink: string };

/* Told apart by lightness and hatching as well as by hue: light and plain, middling and slanted, dark and crossed. */
const paints: Readonly<Record<Year['operations'][number]['runs'][number]['verdict'], Paint>> = {
  allowed: { fill: '#dcefd9', ink: '#6ba86a' },
  risky: { fill: '#efc35a', ink: '#7a5200' },
  'advise-against': { fill: '#8e2f3c', ink: '#f3d9dc' },
};

const phaseFills: Readonly<Record<string, string>> = {
  dormant: '#d9dde3', resting: '#d9dde3', 'bud-swell': '#cfe3c0', 'bud-burst': '#b7d99c', 'leafing-out': '#9ccf7a', extending: '#7fbf63', growing: '#8fc877', 'hardened-off': '#6fa36a', turning: '#e8c27a', 'leaf-fall': '#d9b48c',
};

const patterns = [
  element('pattern', { id: 'slant', width: 6, height: 6, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' }, element('line', { x1: 0, y1: 0, x2: 0, y2: 6, stroke: paints.risky.ink, 'stroke-width': 1.6 })),
  element('pattern', { id: 'cross', width: 6, height: 6, patternUnits: 'userSpaceOnUse', patternTransform: 'rotate(45)' }, element('path', { d: 'M0 0H6M0 0V6', stroke: paints['advise-against'].ink, 'stroke-width': 1.1, fill: 'none' })),
].join('');

const overlay = (verdict: keyof typeof paints): string | undefined => (verdict === 'risky' ? 'url(#slant)' : verdict === 'advise-against' ? 'url(#cross)' : undefined);

/** The wording of a picture: an id and its parameters to a text. */
export type Wording = (id: string, params?: Readonly<Record<string, string>>) => string;

const monthOf = (iso: string, wording: Wording): string => wording('year.months').split(' ')[Number(iso.slice(5, 7)) - 1]!;

/** A day as a picture names it: `9 Apr`. */
export const shortDate = (iso: string, wording: Wording): string => wording('year.day', { day: String(Number(iso.slice(8))), month: monthOf(iso, wording) });

/**
 * A year as a picture: months across, operations down, phases and frost above.
 *
 * Use it to show `advisor.year(…)` on a page; it is SVG text of its own, with a text alternative.
 * @param year as `advisor.year` gave it
 * @param wording texts by id, such as those of `knowledge.wording`
 * @param width in px, from 320; below 600, as on a phone, the name of each operation stands above its strip
 */
export const yearPicture = (year: Year, wording: Wording, width = 800): string => {
  const narrow = width < 600;
  const [left, right, rowHeight, above] = narrow ? [12, width - 12, 31, 15] : [232, width - 12, 16, 0];
  const start = dayOf(year.from);
  const x = (day: Day): number => Math.round((left + ((day - start) / days) * (right - left)) * 10) / 10;
  const bar = (from: string, to: string, y: number, height: number, fill: string, more: Readonly<Record<string, string | number>> = {}): string => {
    const [x0, x1] = [x(dayOf(from)), x(dayOf(to) + 1)];
    return element('rect', { x: x0, y, width: Math.max(0.5, Math.round((x1 - x0) * 10) / 10), height, fill, ...more });
  };
  const parts: string[] = [];
  parts.push(textAt(12, 26, wording('year.title', { species: year.label }), { 'font-size': narrow ? 15 : 18, 'font-weight': 600 }));
  const under = [`${year.from} – ${year.to}`, year.where.text];
  (narrow ? under : [under.join('; ')]).forEach((line, i) => { parts.push(textAt(12, 44 + 15 * i, line, { 'font-size': narrow ? 10 : 11, fill: '#555' })); });

  const top = narrow ? 76 : 66;
  const bottom = top + 62 + year.operations.length * rowHeight;
  for (let day = start; day < start + days; day++) {
    const iso = isoOf(day);
    if (!iso.endsWith('-01') && day !== start) continue;
    if (iso.endsWith('-01')) {
      parts.push(element('line', { x1: x(day), y1: top, x2: x(day), y2: bottom, stroke: '#c9c9c9', 'stroke-width': 1 }));
      if (x(day) < right - 24) parts.push(textAt(x(day) + 3, top + 8, monthOf(iso, wording), { 'font-size': 11, fill: '#444' }));
    }
  }
  if (!narrow) parts.push(textAt(12, top + 28, wording('year.phase'), { 'font-size': 12 }), textAt(12, top + 50, wording('year.frost'), { 'font-size': 12 }));
  let shownUpTo = left;
  const unnamed: { readonly fill: string; readonly label: string }[] = [];
  for (const phase of year.phases) {
    const fill = phaseFills[phase.phase] ?? '#eee';
    parts.push(bar(phase.from, phase.to, top + 14, 18, fill));
    const [x0, x1] = [x(dayOf(phase.from)), x(dayOf(phase.to) + 1)];
    const name = phase.label;
    if (x1 - x0 > name.length * 5.6 && x0 >= shownUpTo - 1) {
      parts.push(textAt(x0 + 3, top + 27, name, { 'font-size': 10, fill: '#1d2b1d' }));
      shownUpTo = x0 + name.length * 5.6;
    } else unnamed.push({ fill, label: `${name} ${shortDate(phase.from, wording)}` });
  }
  const { frost } = year;
  const inYear = (iso: string | undefined): readonly string[] => (iso === undefined ? [] : [-1, 0, 1].map((years) => `${Number(iso.slice(0, 4)) + years}${iso.slice(4)}`).filter((each) => each >= year.from && each <= year.to));
  if (frost.reliable && frost.last !== undefined && frost.first !== undefined) {
    const marks = [...inYear(frost.last).map((iso) => ({ iso, kind: 'last' as const })), ...inYear(frost.first).map((iso) => ({ iso, kind: 'first' as const }))].sort((a, b) => (a.iso < b.iso ? -1 : 1));
    const edges = [year.from, ...marks.map((mark) => mark.iso), isoOf(start + days - 1)];
    edges.slice(0, -1).forEach((from, i) => {
      const begins = marks[i];
      const frosty = begins === undefined ? marks.at(-1)?.kind === 'first' : begins.kind === 'last';
      if (frosty) parts.push(bar(from, edges[i + 1]!, top + 38, 14, '#bcd4ea'));
    });
    for (const { iso, kind } of marks) {
      const at = x(dayOf(iso));
      parts.push(element('line', { x1: at, y1: top + 36, x2: at, y2: top + 54, stroke: '#26588a', 'stroke-width': 2 }));
      const label = wording(`year.frost.${kind}`, { date: shortDate(iso, wording) });
      const before = kind === 'first' ? at - 4 - label.length * 5.2 > left : at + 4 + label.length * 5.2 > right;
      parts.push(textAt(before ? at - 4 : at + 4, top + 49, label, { 'font-size': 10, fill: '#173a5c', ...(before ? { 'text-anchor': 'end' } : {}) }));
    }
  } else if (!frost.reliable && year.phases.length > 0) parts.push(textAt(left + 4, top + 49, wording('year.frost.none'), { 'font-size': 10, fill: '#173a5c' }));

  year.operations.forEach((operation, i) => {
    const y = top + 60 + i * rowHeight;
    const label = operation.label.length > 46 ? `${operation.label.slice(0, 45)}…` : operation.label;
    parts.push(textAt(12, y + 11, label, { 'font-size': !narrow && label.length > 38 ? 9.5 : 11 }, operation.label));
    for (const run of operation.runs) {
      const paint = paints[run.verdict];
      const why = `${shortDate(run.from, wording)} – ${shortDate(run.to, wording)}: ${wording(`year.legend.${run.verdict}`)}${run.because === undefined ? '' : `, ${run.because.text}`}`;
      const over = overlay(run.verdict);
      const plain = bar(run.from, run.to, y + above, 13, paint.fill, run.settled ? {} : { 'fill-opacity': 0.55 });
      parts.push(element('g', {}, element('title', {}, escaped(why)) + plain + (over === undefined || !run.settled ? '' : bar(run.from, run.to, y + above, 13, over))));
    }
  });

  let [at, legendY] = [left, bottom + 14];
  for (const verdict of ['allowed', 'risky', 'advise-against', 'unsettled'] as const) {
    const label = wording(`year.legend.${verdict}`);
    if (at > left && at + 28 + label.length * 6.4 > right) [at, legendY] = [left, legendY + 20];
    const over = verdict === 'unsettled' ? undefined : overlay(verdict);
    const box = { x: at, y: legendY, width: 22, height: 12 };
    parts.push(element('rect', verdict === 'unsettled' ? { ...box, fill: paints.risky.fill, 'fill-opacity': 0.55 } : { ...box, fill: paints[verdict].fill }), over === undefined ? '' : element('rect', { ...box, fill: over }));
    parts.push(textAt(at + 28, legendY + 10, label, { 'font-size': 11 }));
    at += 46 + label.length * 6.4;
  }
  /* Phases that are too short to be named where they stand. */
  const columns = narrow ? 2 : 4;
  unnamed.forEach(({ fill, label }, i) => {
    const [keyX, keyY] = [left + ((right - left) / columns) * (i % columns), legendY + 20 * (1 + Math.floor(i / columns))];
    parts.push(element('rect', { x: keyX, y: keyY, width: 22, height: 12, fill }), textAt(keyX + 28, keyY + 10, label, { 'font-size': 10 }));
  });
  const height = legendY + 26 + 20 * Math.ceil(unnamed.length / columns);
  const described = `${wording('year.describe')} ${year.operations.map((operation) => `${operation.label}: ${operation.runs.filter((run) => run.verdict === 'allowed').map((run) => `${shortDate(run.from, wording)} – ${shortDate(run.to, wording)}`).join(', ') || '–'}`).join('; ')}.`;
  return element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width, height, viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-labelledby': 'year-title year-desc', 'font-family': 'system-ui, sans-serif' },
    element('title', { id: 'year-title' }, escaped(wording('year.title', { species: year.label }))) + element('desc', { id: 'year-desc' }, escaped(described)) + element('defs', {}, patterns) + element('rect', { width, height, fill: '#ffffff' }) + parts.join(''),
  );
};

import type { KeepersSet } from '../advice/keepers/keepers.js';
import type { Proposal } from '../contract/types.generated.js';
import { readStructure } from '../structure/readStructure.js';
import type { Structure } from '../structure/tree.js';
import { type DrawnBranch, drawnBranches, type Fate } from './drawnTree.js';
import { front, frontView, viewOf } from './frontView.js';
import { element, escaped, textAt } from './svg.js';
import { cross, fine, mm, wood } from './treeInk.js';
import { above, viewFromAbove } from './viewFromAbove.js';
import type { Wording } from './yearPicture.js';

const width = 800;
const legendTop = 330;

const legend = (structure: Structure, drawn: readonly DrawnBranch[], wording: Wording): { readonly parts: readonly string[]; readonly bottom: number } => {
  const parts: string[] = [];
  let y = legendTop + 12;
  const row = (sample: string, text: string): void => {
    parts.push(sample, textAt(626, y + 4, text, { 'font-size': 11, fill: '#222222' }));
    y += 20;
  };
  for (const fate of ['is', 'keep', 'now', 'later', 'dead'] as const) {
    const of = drawn.filter((each) => each.fate === fate);
    if (of.length === 0) continue;
    const dates = [...new Set(of.flatMap(({ on }) => on ?? []))].sort();
    row(wood([584, y], [618, y], fate, 6) + (fate === 'now' || fate === 'later' ? cross([584, y], fate) : ''), wording(`tree.${fate}`, { date: dates.length > 1 ? wording('tree.from', { date: dates[0]! }) : (dates[0] ?? '') }));
  }
  if (structure.wounds.length > 0) row(element('ellipse', { cx: 601, cy: y, rx: 5, ry: 6, fill: '#6b2d1a', 'fill-opacity': 0.85, stroke: '#6b2d1a' }), wording('tree.wounds', { sizes: structure.wounds.map(({ widthMm }) => mm(widthMm)).join(', ') }));
  row(element('path', { d: `M601 ${y - 7}v14m-4 0h8m-8 -14h8`, stroke: '#777777', fill: 'none' }), wording('tree.gaps'));
  if (drawn.some(({ guessed }) => guessed)) row(textAt(598, y + 5, '*', { 'font-size': 12 }), wording('tree.guessed'));
  return { parts, bottom: y };
};

/**
 * A tree as a picture: from the front and from above, branches to scale, what is kept, what goes now and what later.
 *
 * Use it to show a set of `advisor.keepers(…)`, or a told structure alone; it is SVG text of its own, 800 wide, with a text alternative.
 * @param tree its `structure`, in mm and degrees, and its `trunk`
 * @param wording texts by id, such as those of `knowledge.wording`
 * @param set one of the sets that `advisor.keepers` gave; without it the tree as it is
 * @throws SparebudError where the structure cannot be
 */
export const treePicture = (tree: Pick<Proposal['tree'], 'structure' | 'trunk' | 'species'>, wording: Wording, set?: KeepersSet): string => {
  const structure = readStructure(tree.structure ?? {}, tree);
  const drawn = drawnBranches(structure, set);
  const key = legend(structure, drawn, wording);
  const height = fine(Math.max(viewOf(structure, drawn).bottom, key.bottom) + 34);
  const title = wording('tree.title', { species: tree.species });
  const named = (fate: Fate): string => drawn.filter((each) => each.fate === fate).map(({ branch }) => branch.id).join(', ') || '–';
  const left = structure.branches.filter(({ id }) => drawn.every(({ branch }) => branch.id !== id)).map(({ id }) => id);
  const described = set === undefined ? wording('tree.describe', { branches: named('is') }) : wording('tree.describe-set', { keep: named('keep'), now: named('now'), later: named('later') });
  const size = structure.heightMm === undefined || structure.baseMm === undefined ? '' : wording('tree.size', { height: mm(structure.heightMm.value), base: mm(structure.baseMm.value) });
  const body = [
    textAt(12, 26, title, { 'font-size': 18, 'font-weight': 600 }),
    textAt(12, 44, [size, ...(set?.leader === undefined ? [] : [wording('tree.leader', { branch: set.leader.branch, height: mm(set.leader.heightMm) })])].filter((text) => text !== '').join('; '), { 'font-size': 11, fill: '#555555' }),
    textAt((front.left + front.right) / 2, 62, wording('tree.front'), { 'font-size': 12, 'text-anchor': 'middle', fill: '#333333' }),
    textAt(above.x, 62, wording('tree.above'), { 'font-size': 12, 'text-anchor': 'middle', fill: '#333333' }),
    frontView(structure, drawn, wording, set), viewFromAbove(structure, drawn, wording), ...key.parts,
    ...(left.length === 0 ? [] : [textAt(12, height - 6, wording('tree.left-out', { branches: left.join(', ') }), { 'font-size': 10, fill: '#555555' })]),
  ].join('');
  return element(
    'svg',
    { xmlns: 'http://www.w3.org/2000/svg', width, height, viewBox: `0 0 ${width} ${height}`, role: 'img', 'aria-labelledby': 'tree-title tree-desc', 'font-family': 'system-ui, sans-serif' },
    element('title', { id: 'tree-title' }, escaped(title)) + element('desc', { id: 'tree-desc' }, escaped(described)) + element('rect', { width, height, fill: '#ffffff' }) + body,
  );
};

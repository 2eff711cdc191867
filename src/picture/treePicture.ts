import type { KeepersSet } from '../advice/keepers/keepers.js';
import type { Proposal } from '../contract/types.generated.js';
import { directionOf } from '../structure/azimuth.js';
import { readStructure } from '../structure/readStructure.js';
import { largestEmptySector } from '../structure/sides.js';
import type { Structure, Trunk } from '../structure/tree.js';
import { diameterAt, pointAt } from '../structure/trunkAt.js';
import { type DrawnBranch, drawnBranches, type Fate } from './drawnTree.js';
import { element, escaped, textAt } from './svg.js';
import type { Wording } from './yearPicture.js';

const width = 800;
const front = { left: 160, right: 444, top: 72, tallest: 470 };
const labelLeft = front.left - 22;
const labelRight = front.right + 12;
const above = { x: 688, y: 184, reach: 90 };
const legendTop = 330;

/** A side without a branch is marked from here on: a third of the round. */
const shownEmptyDeg = 120;

/** A disc with a number at the tip of a branch, and the room it takes. */
const discRadius = 7.5;

interface Paint {
  readonly ink: string;
  readonly dash?: string;
}

/* Told apart by dashes as well as by colour: kept is whole, what goes now is dashed, what goes later is dotted and dashed, dead wood is dotted. */
const paints: Readonly<Record<Fate, Paint>> = {
  is: { ink: '#4a3b2c' },
  keep: { ink: '#23572f' },
  now: { ink: '#b3261e', dash: '9 5' },
  later: { ink: '#a86400', dash: '12 4 2 4' },
  dead: { ink: '#777777', dash: '2 4' },
};

const bark = { fill: '#d8c9b4', stroke: '#7a6650' };

type Point = readonly [number, number];

const fine = (value: number): number => Math.round(value * 10) / 10;
const mm = (value: number): string => String(Math.round(value));
const pathOf = (points: readonly Point[]): string => points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${fine(x)} ${fine(y)}`).join('');

const strokeOf = (fate: Fate, widthPx: number): Readonly<Record<string, string | number>> => {
  const { ink, dash } = paints[fate];
  return { stroke: ink, 'stroke-width': fine(Math.max(2, widthPx)), 'stroke-linecap': 'butt', ...(dash === undefined ? {} : { 'stroke-dasharray': dash }) };
};

/** A branch as it narrows: kept ones as whole wood, the others by their outline dashed along the middle. */
const wood = ([x0, y0]: Point, [x1, y1]: Point, fate: Fate, widthPx: number): string => {
  const long = Math.hypot(x1 - x0, y1 - y0) || 1;
  const across: Point = [-(y1 - y0) / long, (x1 - x0) / long];
  const [wide, narrow] = [Math.max(2, widthPx) / 2, Math.max(1, widthPx * 0.3) / 2];
  const outline: readonly Point[] = [[x0 + across[0] * wide, y0 + across[1] * wide], [x1 + across[0] * narrow, y1 + across[1] * narrow], [x1 - across[0] * narrow, y1 - across[1] * narrow], [x0 - across[0] * wide, y0 - across[1] * wide]];
  const { ink, dash } = paints[fate];
  if (dash === undefined) return element('path', { d: `${pathOf(outline)}Z`, fill: ink });
  return element('path', { d: `${pathOf(outline)}Z`, fill: ink, 'fill-opacity': 0.14 }) + element('line', { x1: fine(x0), y1: fine(y0), x2: fine(x1), y2: fine(y1), ...strokeOf(fate, Math.min(4, widthPx)) });
};

/** A number in a disc: the same in both views and in the list. */
const disc = ([x, y]: Point, number: number, fate: Fate): string =>
  element('circle', { cx: fine(x), cy: fine(y), r: discRadius, fill: '#ffffff', stroke: paints[fate].ink, 'stroke-width': 1.4 }) + textAt(fine(x), fine(y + 3.3), String(number), { 'font-size': 9.5, 'text-anchor': 'middle', fill: paints[fate].ink });

/** A cross where a branch comes off. */
const cross = ([x, y]: Point, fate: Fate): string =>
  fate === 'now' || fate === 'later' ? element('path', { d: `M${fine(x - 4)} ${fine(y - 4)}l8 8M${fine(x + 4)} ${fine(y - 4)}l-8 8`, stroke: paints[fate].ink, 'stroke-width': 1.8, fill: 'none' }) : '';

/** Places along a line, in order and no nearer to each other than they are high. */
const spread = (wanted: readonly number[], height: number, least: number, most: number): readonly number[] => {
  const placed: number[] = [];
  wanted.forEach((y) => placed.push(Math.max(y, placed.length === 0 ? least : placed.at(-1)! + height)));
  for (let i = placed.length - 1, limit = most; i >= 0; i--, limit = placed[i + 1]! - height) placed[i] = Math.min(placed[i]!, limit);
  return placed;
};

/** Where the discs stand: at the tips, or further in along the branch where another stands already. */
const spots = (lines: readonly (readonly [Point, Point])[]): readonly Point[] => {
  const placed: Point[] = [];
  for (const [[x0, y0], [x1, y1]] of lines) {
    const long = Math.hypot(x1 - x0, y1 - y0);
    let spot: Point = [x1, y1];
    for (let back = 0; back < long && placed.some(([x, y]) => Math.hypot(x - spot[0], y - spot[1]) < 2 * discRadius); back += 2) spot = [x1 + ((x0 - x1) * back) / long, y1 + ((y0 - y1) * back) / long];
    placed.push(spot);
  }
  return placed;
};

/** The scale and the place of the view from the front. */
const viewOf = (structure: Structure, drawn: readonly DrawnBranch[]): { readonly at: (x: number, z: number) => Point; readonly scale: number; readonly topMm: number; readonly bottom: number } => {
  const ends = drawn.flatMap(({ line }) => [line.base, line.tip]);
  const points = structure.trunks.flatMap((trunk) => trunk.points);
  const xs = [...ends.map(({ x }) => x), ...points.flatMap(({ sideMm, diameterMm }) => [sideMm - diameterMm / 2, sideMm + diameterMm / 2])];
  const topMm = Math.max(1, ...ends.map(({ z }) => z), ...points.map(({ heightMm }) => heightMm), structure.heightMm?.value ?? 0);
  const lowMm = Math.min(0, ...ends.map(({ z }) => z));
  const [least, most] = [Math.min(...xs), Math.max(...xs)];
  const scale = Math.min((front.right - front.left - 4 * discRadius) / Math.max(1, most - least), front.tallest / (topMm - lowMm));
  const bottom = Math.max(front.top + (topMm - lowMm) * scale, legendTop + 60);
  const middle = (front.left + front.right) / 2;
  return { at: (x, z) => [middle + (x - (least + most) / 2) * scale, bottom - (z - lowMm) * scale], scale, topMm, bottom };
};

const trunkShape = (trunk: Trunk, at: (x: number, z: number) => Point, goes: boolean): string => {
  const { points } = trunk;
  if (points.length === 0) return '';
  const left = points.map(({ heightMm, diameterMm, sideMm }) => at(sideMm - diameterMm / 2, heightMm));
  const right = points.map(({ heightMm, diameterMm, sideMm }) => at(sideMm + diameterMm / 2, heightMm));
  return element('path', { d: `${pathOf([...left, ...[...right].reverse()])}Z`, fill: bark.fill, stroke: bark.stroke, 'stroke-width': 1.2, 'stroke-linejoin': 'round', ...(trunk.pointsTold ? {} : { 'stroke-dasharray': '3 3' }), ...(goes ? { 'fill-opacity': 0.4, stroke: paints.now.ink, 'stroke-width': 2, 'stroke-dasharray': '9 5' } : {}) });
};

const frontView = (structure: Structure, drawn: readonly DrawnBranch[], wording: Wording, set: KeepersSet | undefined): string => {
  const { at, scale, topMm, bottom } = viewOf(structure, drawn);
  const parts: string[] = [];
  const [, soil] = at(0, 0);
  parts.push(element('line', { x1: front.left, y1: fine(soil), x2: front.right, y2: fine(soil), stroke: '#7a6650', 'stroke-width': 1.5 }));
  const behind = [...drawn].sort((a, b) => b.line.tip.y - a.line.tip.y || a.number - b.number);
  const branchOf = ({ branch, line, fate }: DrawnBranch): string => wood(at(line.base.x, line.base.z), at(line.tip.x, line.tip.z), fate, (branch.diameterMm?.value ?? 0) * scale);
  parts.push(...behind.filter(({ line }) => line.tip.y > line.base.y).map(branchOf));
  parts.push(...structure.trunks.map((trunk) => trunkShape(trunk, at, set?.remove.includes(trunk.id) === true)));
  parts.push(...behind.filter(({ line }) => line.tip.y <= line.base.y).map(branchOf));
  for (const wound of structure.wounds) {
    const trunk = structure.trunks[0]!;
    const out = wound.azimuthDeg === undefined ? { x: 0, y: -1 } : directionOf(wound.azimuthDeg);
    const [x, y] = at(pointAt(trunk, wound.heightMm).sideMm + (out.x * (diameterAt(trunk, wound.heightMm)?.value ?? 0)) / 2, wound.heightMm);
    const half = Math.max(3, (wound.widthMm * scale) / 2);
    parts.push(element('g', {}, element('title', {}, escaped(wording('tree.wound', { mm: mm(wound.widthMm), height: mm(wound.heightMm) }))) + element('ellipse', { cx: fine(x), cy: fine(y), rx: fine(Math.max(2.5, half * Math.max(0.35, Math.abs(out.y)))), ry: fine(half), fill: wound.closed ? 'none' : '#6b2d1a', 'fill-opacity': out.y > 0.2 ? 0.25 : 0.85, stroke: '#6b2d1a', 'stroke-width': 1.4, ...(out.y > 0.2 ? { 'stroke-dasharray': '2 2' } : {}) })));
  }
  parts.push(...drawn.map(({ line, fate }) => cross(at(line.base.x, line.base.z), fate)));
  if (set?.leader !== undefined) {
    const { sideMm } = pointAt(structure.trunks[0]!, set.leader.heightMm);
    const [x, y] = at(sideMm, set.leader.heightMm);
    parts.push(element('line', { x1: fine(x - 34), y1: fine(y - 4), x2: fine(x + 34), y2: fine(y - 4), ...strokeOf('now', 2.5) }));
  }
  /* The gaps in height between those that stay, along a rule at the left. */
  const rule = front.left - 8;
  const stays = [...new Set(drawn.filter(({ fate, branch }) => (fate === 'keep' || fate === 'is') && branch.onTrunk).map(({ branch }) => branch.heightMm))].sort((a, b) => a - b);
  const ticks = [0, ...stays, topMm];
  parts.push(element('line', { x1: rule, y1: fine(at(0, topMm)[1]), x2: rule, y2: fine(soil), stroke: '#999999', 'stroke-width': 1 }));
  ticks.forEach((heightMm, i) => {
    const y = at(0, heightMm)[1];
    parts.push(element('line', { x1: rule - 4, y1: fine(y), x2: rule + 4, y2: fine(y), stroke: '#777777', 'stroke-width': 1 }));
    const next = ticks[i + 1];
    if (next !== undefined && (next - heightMm) * scale >= 13) parts.push(textAt(rule + 6, fine((y + at(0, next)[1]) / 2 + 3), mm(next - heightMm), { 'font-size': 9, fill: '#666666', stroke: '#ffffff', 'stroke-width': 3, 'paint-order': 'stroke' }));
  });
  /* Numbers at the tips, and what was measured beside them: left of the middle to the left, else to the right. */
  const middle = (front.left + front.right) / 2;
  const tips = spots(drawn.map(({ line }) => [at(line.base.x, line.base.z), at(line.tip.x, line.tip.z)]));
  for (const side of ['left', 'right'] as const) {
    const listed = drawn.map((each, i) => ({ each, tip: tips[i]! })).filter(({ tip }) => (side === 'left') === tip[0] < middle).sort((a, b) => a.tip[1] - b.tip[1] || a.each.number - b.each.number);
    const ys = spread(listed.map(({ tip }) => tip[1]), Math.min(28, (bottom - front.top) / Math.max(1, listed.length)), front.top + 8, bottom - 12);
    listed.forEach(({ each: { branch, number, fate, guessed }, tip }, i) => {
      const y = ys[i]!;
      const x = side === 'left' ? labelLeft : labelRight;
      parts.push(element('line', { x1: fine(tip[0]), y1: fine(tip[1]), x2: side === 'left' ? x + 3 : x - 3, y2: fine(y), stroke: '#bbbbbb', 'stroke-width': 0.8 }));
      parts.push(disc(tip, number, fate));
      const anchor = side === 'left' ? { 'text-anchor': 'end' } : {};
      const name = branch.id.length > 18 ? `${branch.id.slice(0, 17)}…` : branch.id;
      parts.push(textAt(x, fine(y), `${number} ${name}`, { 'font-size': 11, 'font-weight': 600, fill: paints[fate].ink, ...anchor }, `${number} ${branch.id}`));
      const sizes = wording('tree.sizes', { height: mm(branch.heightMm), diameter: branch.diameterMm === undefined ? '?' : mm(branch.diameterMm.value) });
      parts.push(textAt(x, fine(y + 11), `${sizes}${guessed ? ' *' : ''}`, { 'font-size': 9.5, fill: '#444444', ...anchor }));
    });
  }
  return parts.join('');
};

const viewFromAbove = (structure: Structure, drawn: readonly DrawnBranch[], wording: Wording): string => {
  const reachMm = Math.max(1, ...drawn.flatMap(({ line }) => [Math.hypot(line.tip.x, line.tip.y)]), ...structure.trunks.flatMap(({ points }) => points.map(({ sideMm, backMm }) => Math.hypot(sideMm, backMm))));
  const scale = above.reach / reachMm;
  const at = (x: number, y: number): Point => [above.x + x * scale, above.y - y * scale];
  const parts: string[] = [element('circle', { cx: above.x, cy: above.y, r: above.reach + 12, fill: '#faf8f4', stroke: '#d9d2c5', 'stroke-width': 1 })];
  const stays = drawn.filter(({ fate, branch }) => (fate === 'keep' || fate === 'is') && branch.onTrunk).map(({ branch }) => branch.azimuthDeg!);
  const empty = largestEmptySector(stays);
  if (empty !== undefined && empty.widthDeg >= shownEmptyDeg) {
    const rim = (azimuthDeg: number): Point => { const { x, y } = directionOf(azimuthDeg); return [above.x + x * (above.reach + 12), above.y - y * (above.reach + 12)]; };
    const [from, to] = [rim(empty.middleDeg - empty.widthDeg / 2), rim(empty.middleDeg + empty.widthDeg / 2)];
    if (empty.widthDeg < 359) parts.push(element('path', { d: `M${above.x} ${above.y}L${fine(from[0])} ${fine(from[1])}A${above.reach + 12} ${above.reach + 12} 0 ${empty.widthDeg > 180 ? 1 : 0} 1 ${fine(to[0])} ${fine(to[1])}Z`, fill: '#ece6da', stroke: '#a99c85', 'stroke-width': 1, 'stroke-dasharray': '3 3' }));
  }
  for (const trunk of structure.trunks) {
    const line = trunk.points.map(({ sideMm, backMm }) => at(sideMm, backMm));
    if (line.length > 1) parts.push(element('path', { d: pathOf(line), fill: 'none', stroke: bark.stroke, 'stroke-width': 2, 'stroke-opacity': 0.5 }));
    const foot = trunk.points[0];
    if (foot !== undefined) parts.push(element('circle', { cx: fine(at(foot.sideMm, foot.backMm)[0]), cy: fine(at(foot.sideMm, foot.backMm)[1]), r: fine(Math.max(3, (foot.diameterMm * scale) / 2)), fill: bark.fill, stroke: bark.stroke, 'stroke-width': 1.2 }));
  }
  for (const { branch, line, fate } of drawn) parts.push(wood(at(line.base.x, line.base.y), at(line.tip.x, line.tip.y), fate, (branch.diameterMm?.value ?? 0) * scale));
  const tips = spots(drawn.map(({ line }) => [at(line.base.x, line.base.y), at(line.tip.x, line.tip.y)]));
  parts.push(...drawn.map(({ fate, number }, i) => disc(tips[i]!, number, fate)));
  if (empty !== undefined && empty.widthDeg >= shownEmptyDeg) {
    const { x, y } = directionOf(empty.middleDeg);
    parts.push(textAt(fine(above.x + x * above.reach * 0.75), fine(above.y - y * above.reach * 0.75 + 3), wording('tree.empty', { degrees: mm(empty.widthDeg) }), { 'font-size': 10, 'text-anchor': 'middle', fill: '#5c513f', stroke: '#ffffff', 'stroke-width': 3, 'paint-order': 'stroke' }));
  }
  parts.push(textAt(above.x, above.y + above.reach + 28, wording('tree.viewer'), { 'font-size': 11, 'text-anchor': 'middle', fill: '#555555' }));
  return parts.join('');
};

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
    row(wood([584, y], [618, y], fate, 6) + (fate === 'now' || fate === 'later' ? cross([584, y], fate) : ''), wording(`tree.${fate}`, { date: dates.join(', ') }));
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

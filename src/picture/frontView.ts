import type { KeepersSet } from '../advice/keepers/keepers.js';
import { directionOf } from '../structure/azimuth.js';
import type { Structure, Trunk } from '../structure/tree.js';
import { diameterAt, pointAt } from '../structure/trunkAt.js';
import type { DrawnBranch } from './drawnTree.js';
import { element, escaped, textAt } from './svg.js';
import { bark, cross, disc, discRadius, fine, mm, paints, pathOf, type Point, spots, strokeOf, wood } from './treeInk.js';
import type { Wording } from './yearPicture.js';

/** Where the tree stands; names to its left and right. */
export const front = { left: 160, right: 444, top: 72, shortest: 318, tallest: 470 };
const labelLeft = front.left - 22;
const labelRight = front.right + 12;

/** Places along a line, in order and no nearer to each other than they are high. */
const spread = (wanted: readonly number[], height: number, least: number, most: number): readonly number[] => {
  const placed: number[] = [];
  wanted.forEach((y) => placed.push(Math.max(y, placed.length === 0 ? least : placed.at(-1)! + height)));
  for (let i = placed.length - 1, limit = most; i >= 0; i--, limit = placed[i + 1]! - height) placed[i] = Math.min(placed[i]!, limit);
  return placed;
};

/** The scale and the place of the view from the front. */
export const viewOf = (structure: Structure, drawn: readonly DrawnBranch[]): { readonly at: (x: number, z: number) => Point; readonly scale: number; readonly topMm: number; readonly bottom: number } => {
  const ends = drawn.flatMap(({ line }) => [line.base, line.tip]);
  const points = structure.trunks.flatMap((trunk) => trunk.points);
  const xs = [...ends.map(({ x }) => x), ...points.flatMap(({ sideMm, diameterMm }) => [sideMm - diameterMm / 2, sideMm + diameterMm / 2])];
  const topMm = Math.max(1, ...ends.map(({ z }) => z), ...points.map(({ heightMm }) => heightMm), structure.heightMm?.value ?? 0);
  const lowMm = Math.min(0, ...ends.map(({ z }) => z));
  const [least, most] = [Math.min(...xs), Math.max(...xs)];
  const scale = Math.min((front.right - front.left - 4 * discRadius) / Math.max(1, most - least), front.tallest / (topMm - lowMm));
  const bottom = Math.max(front.top + (topMm - lowMm) * scale, front.top + front.shortest);
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

/** The tree from the front, each branch with its number, its height and its thickness. */
export const frontView = (structure: Structure, drawn: readonly DrawnBranch[], wording: Wording, set: KeepersSet | undefined): string => {
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

import { directionOf } from '../structure/azimuth.js';
import { largestEmptySector } from '../structure/sides.js';
import type { Structure } from '../structure/tree.js';
import type { DrawnBranch } from './drawnTree.js';
import { element, textAt } from './svg.js';
import { bark, disc, fine, mm, pathOf, type Point, spots, wood } from './treeInk.js';
import type { Wording } from './yearPicture.js';

/** Its middle, and how far its longest branch reaches. */
export const above = { x: 688, y: 184, reach: 90 };

/** A side without a branch is marked from here on: a third of the round. */
const shownEmptyDeg = 120;

/** The tree from above, the viewer below it: which way branches grow, and the widest side that stays empty. */
export const viewFromAbove = (structure: Structure, drawn: readonly DrawnBranch[], wording: Wording): string => {
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

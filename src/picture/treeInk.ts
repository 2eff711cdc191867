import type { Fate } from './drawnTree.js';
import { element, textAt } from './svg.js';

/** A disc with a number at the tip of a branch, and the room it takes. */
export const discRadius = 7.5;

interface Paint {
  readonly ink: string;
  readonly dash?: string;
}

/* Told apart by dashes as well as by colour: kept is whole, what goes now is dashed, what goes later is dotted and dashed, dead wood is dotted. */
/** The colour and dashes of each fate. */
export const paints: Readonly<Record<Fate, Paint>> = {
  is: { ink: '#4a3b2c' },
  keep: { ink: '#23572f' },
  now: { ink: '#b3261e', dash: '9 5' },
  later: { ink: '#a86400', dash: '12 4 2 4' },
  dead: { ink: '#777777', dash: '2 4' },
};

export const bark = { fill: '#d8c9b4', stroke: '#7a6650' };

/** A place in the picture: to the right, and down. */
export type Point = readonly [number, number];

export const fine = (value: number): number => Math.round(value * 10) / 10;
export const mm = (value: number): string => String(Math.round(value));
export const pathOf = (points: readonly Point[]): string => points.map(([x, y], i) => `${i === 0 ? 'M' : 'L'}${fine(x)} ${fine(y)}`).join('');

export const strokeOf = (fate: Fate, widthPx: number): Readonly<Record<string, string | number>> => {
  const { ink, dash } = paints[fate];
  return { stroke: ink, 'stroke-width': fine(Math.max(2, widthPx)), 'stroke-linecap': 'butt', ...(dash === undefined ? {} : { 'stroke-dasharray': dash }) };
};

/** A branch as it narrows: kept ones as whole wood, the others by their outline dashed along the middle. */
export const wood = ([x0, y0]: Point, [x1, y1]: Point, fate: Fate, widthPx: number): string => {
  const long = Math.hypot(x1 - x0, y1 - y0) || 1;
  const across: Point = [-(y1 - y0) / long, (x1 - x0) / long];
  const [wide, narrow] = [Math.max(2, widthPx) / 2, Math.max(1, widthPx * 0.3) / 2];
  const outline: readonly Point[] = [[x0 + across[0] * wide, y0 + across[1] * wide], [x1 + across[0] * narrow, y1 + across[1] * narrow], [x1 - across[0] * narrow, y1 - across[1] * narrow], [x0 - across[0] * wide, y0 - across[1] * wide]];
  const { ink, dash } = paints[fate];
  if (dash === undefined) return element('path', { d: `${pathOf(outline)}Z`, fill: ink });
  return element('path', { d: `${pathOf(outline)}Z`, fill: ink, 'fill-opacity': 0.14 }) + element('line', { x1: fine(x0), y1: fine(y0), x2: fine(x1), y2: fine(y1), ...strokeOf(fate, Math.min(4, widthPx)) });
};

/** A number in a disc: the same in both views and in the list. */
export const disc = ([x, y]: Point, number: number, fate: Fate): string =>
  element('circle', { cx: fine(x), cy: fine(y), r: discRadius, fill: '#ffffff', stroke: paints[fate].ink, 'stroke-width': 1.4 }) + textAt(fine(x), fine(y + 3.3), String(number), { 'font-size': 9.5, 'text-anchor': 'middle', fill: paints[fate].ink });

/** A cross where a branch comes off. */
export const cross = ([x, y]: Point, fate: Fate): string =>
  fate === 'now' || fate === 'later' ? element('path', { d: `M${fine(x - 4)} ${fine(y - 4)}l8 8M${fine(x + 4)} ${fine(y - 4)}l-8 8`, stroke: paints[fate].ink, 'stroke-width': 1.8, fill: 'none' }) : '';

/** Where the discs stand: at the tips, or further in along the branch where another stands already. */
export const spots = (lines: readonly (readonly [Point, Point])[]): readonly Point[] => {
  const placed: Point[] = [];
  for (const [[x0, y0], [x1, y1]] of lines) {
    const long = Math.hypot(x1 - x0, y1 - y0);
    let spot: Point = [x1, y1];
    for (let back = 0; back < long && placed.some(([x, y]) => Math.hypot(x - spot[0], y - spot[1]) < 2 * discRadius); back += 2) spot = [x1 + ((x0 - x1) * back) / long, y1 + ((y0 - y1) * back) / long];
    placed.push(spot);
  }
  return placed;
};

import { frameOf, termsFor } from '../../../src/structure/keepers/frame.js';
import type { KeepersQuestion } from '../../../src/structure/keepers/keepersOf.js';
import { readStructure } from '../../../src/structure/readStructure.js';
import type { ToldStructure } from '../../../src/structure/tree.js';
import { shipped } from '../../shipped.js';

/** Numbers between 0 and 1 that are the same for the same seed: mulberry32, a public-domain generator. */
export const numbersFrom = (seed: number): (() => number) => {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  };
};

export interface Told {
  readonly structure: ToldStructure;
  readonly trunk: { readonly diameterMm: number; readonly heightMm: number };
}

/** An invented tree: a leaning or bent trunk, branches alone and in whorls, some measured in full, some hardly; sometimes a second trunk, a branch on a branch, a wound. */
export const inventedTree = (seed: number, branches: number): Told => {
  const next = numbersFrom(seed);
  const between = (least: number, most: number): number => least + next() * (most - least);
  const heightMm = Math.round(between(250, 900));
  const diameterMm = Math.round(heightMm * between(0.07, 0.16));
  const bent = next() < 0.5;
  const points = [0, 0.15, 0.3, 0.5, 0.75, 1].map((at) => ({
    heightMm: at * heightMm, diameterMm: diameterMm * (1 - 0.85 * at),
    ...(bent ? { sideMm: at === 0 ? 0 : between(-0.08, 0.12) * heightMm, backMm: at === 0 ? 0 : between(-0.05, 0.05) * heightMm } : {}),
  }));
  const second = next() < 0.25 ? [{ id: 'second', from: 'first', atMm: 0.05 * heightMm, points: [{ heightMm: 0.05 * heightMm, diameterMm: diameterMm * 0.6, sideMm: 0.08 * heightMm }, { heightMm: 0.75 * heightMm, diameterMm: diameterMm * 0.1, sideMm: 0.2 * heightMm }] }] : [];
  const widthAt = (at: number, trunk: number): number => diameterMm * trunk * Math.max(0.12, 1 - 0.85 * at);
  let level = between(0.12, 0.3);
  const told = Array.from({ length: branches }, (_, i) => {
    if (next() < 0.6) level = Math.min(0.94, level + between(0.01, 1.4 / branches));
    const onSecond = second.length > 0 && level < 0.7 && next() < 0.3;
    const width = widthAt(level, onSecond ? 0.5 : 1) * between(0.15, 0.62);
    const shape = next() < 0.5 ? { lengthMm: Math.round(between(0.15, 0.5) * heightMm), pitchDeg: Math.round(between(-40, 75)) } : {};
    return {
      id: `b${String(i).padStart(2, '0')}`, heightMm: level * heightMm + between(0, 3), azimuthDeg: between(0, 360), diameterMm: width,
      ...(onSecond ? { from: 'second' } : {}), ...shape, ...(next() < 0.08 ? { dead: true } : {}),
      ...(next() < 0.12 ? { faults: [(['crossing', 'inside-curve', 'straight-up', 'too-low'] as const)[Math.floor(next() * 4)]!] } : {}),
    };
  });
  const twigs = told.map((branch, i) => (i > 2 && next() < 0.12 ? { ...branch, from: told[i - 2]!.id, diameterMm: Math.min(branch.diameterMm, told[i - 2]!.diameterMm * 0.6) } : branch));
  const wounds = next() < 0.4 ? [{ heightMm: between(0.1, 0.6) * heightMm, azimuthDeg: between(0, 360), widthMm: diameterMm * between(0.05, 0.25) }] : [];
  return { structure: { trunks: [{ id: 'first', points }, ...second], branches: twigs, wounds }, trunk: { diameterMm, heightMm } };
};

/** What is asked of an invented tree, under limits as the handbooks set them. */
export const asked = (told: Told, style?: string, more: Partial<KeepersQuestion> = {}): KeepersQuestion => {
  const structure = readStructure(told.structure, { trunk: told.trunk });
  return {
    frame: frameOf(structure, termsFor(shipped.aims, style), {}),
    limits: { foliageShare: 0.33, sectionShare: 1 / 3, girthShare: 0.25, girthShareInAll: 0.5 },
    years: 1, locked: new Map(structure.branches.filter(({ dead }) => dead).map(({ id }) => [id, 'gone'])), aside: new Set(), leaders: [], forbidden: [],
    equal: shipped.aims.equal, told: 12, ...more,
  };
};

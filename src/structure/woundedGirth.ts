import { turned } from './azimuth.js';
import type { Measure } from './measure.js';

/** A cut or wound on the girth: straight across, in mm; its side where it is known. */
export interface GirthWound {
  readonly heightMm: number;
  readonly azimuthDeg?: number;
  readonly widthMm: number;
}

/** Share of the girth that a wound takes: an arc over its width, measured straight across; wider than the trunk, it was measured along the bark. */
export const girthShareOf = (widthMm: number, trunkMm: number): number =>
  widthMm <= trunkMm ? Math.asin(widthMm / trunkMm) / Math.PI : Math.min(1, Math.max(0.5, widthMm / (Math.PI * trunkMm)));

/** Share of the ring that lies under any of these arcs: those that overlap count once. */
const unionOf = (arcs: readonly { readonly middle: number; readonly share: number }[]): number => {
  const parts = arcs.flatMap(({ middle, share }) => {
    const from = turned(middle - share * 180) / 360;
    return from + share > 1 ? [{ from, to: 1 }, { from: 0, to: from + share - 1 }] : [{ from, to: from + share }];
  }).sort((a, b) => a.from - b.from);
  let [covered, reached] = [0, 0];
  for (const { from, to } of parts) {
    covered += Math.max(0, to - Math.max(from, reached));
    reached = Math.max(reached, to);
  }
  return covered;
};

/** Wounds whose side is not known may lie under others or beside them: at least the largest counts, at most all. */
const shareOf = (wounds: readonly GirthWound[], trunkMm: number): { readonly atLeast: number; readonly atMost: number } => {
  const union = unionOf(wounds.flatMap(({ azimuthDeg, widthMm }) => (azimuthDeg === undefined ? [] : [{ middle: azimuthDeg, share: girthShareOf(widthMm, trunkMm) }])));
  const astray = wounds.filter(({ azimuthDeg }) => azimuthDeg === undefined).map(({ widthMm }) => girthShareOf(widthMm, trunkMm));
  return { atLeast: Math.max(union, ...astray), atMost: Math.min(1, astray.reduce((sum, share) => sum + share, union)) };
};

/**
 * Share of the girth that is wounded at one level: of all stretches of the trunk, as long as it is thick, that hold this height, the one that is wounded most.
 *
 * The stretch is plain geometry; no source says how far sap must travel to go round a wound.
 */
export const woundedGirthAt = (heightMm: number, trunkMm: number, wounds: readonly GirthWound[]): Measure => {
  let [atLeast, atMost] = [0, 0];
  for (const lowest of [heightMm, ...wounds.map((wound) => wound.heightMm)].filter((from) => from <= heightMm && heightMm - from <= trunkMm)) {
    const share = shareOf(wounds.filter((wound) => wound.heightMm >= lowest && wound.heightMm - lowest <= trunkMm), trunkMm);
    atLeast = Math.max(atLeast, share.atLeast);
    atMost = Math.max(atMost, share.atMost);
  }
  return { value: atMost, atLeast, atMost, certainty: 'worked-out' };
};

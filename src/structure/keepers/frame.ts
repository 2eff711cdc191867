import type { Aims, Terms } from '../../knowledge/aims.js';
import type { Branch, Structure, Trunk } from '../tree.js';
import { pointAt } from '../trunkAt.js';
import { angleBetween, azimuthOf } from '../azimuth.js';
import type { AimedSize } from '../levelCloseness.js';
import { balance } from '../sides.js';

/** A tree seen with an aim: what is weighed, and against what size and side. */
export interface Frame {
  readonly structure: Structure;
  readonly terms: Terms;
  readonly aimed: AimedSize;
  /** The height that the aim has, or else the tree. */
  readonly heightMm?: number;
  /** The side that the trunk leans to, where its line was told and it leans. */
  readonly leanDeg?: number;
  /** The side that the tree streams to: where it leans, or else the side that its branches weigh to. */
  readonly streamDeg?: number;
}

/** The terms of a style; those of a tree of no told style where there is none. */
export const termsFor = ({ terms, styles }: Aims, style: string | undefined): Terms => {
  const own: Readonly<Record<string, object | undefined>> = style === undefined ? {} : (styles[style]?.terms ?? {});
  return Object.fromEntries(Object.entries(terms).map(([term, weighed]) => [term, { ...(weighed as object), ...own[term] }])) as unknown as Terms;
};

/** A trunk leans where its top stands off from its foot by this share of its height or more (practice). */
const leans = 0.15;

/** Branches weigh to one side where this much of their section pulls there (practice). */
const weighs = 0.2;

const leanOf = ({ points, lineTold }: Trunk): number | undefined => {
  const [foot, top] = [points[0], points.at(-1)];
  if (!lineTold || foot === undefined || top === undefined) return undefined;
  const off = { x: top.sideMm - foot.sideMm, y: top.backMm - foot.backMm };
  return Math.hypot(off.x, off.y) < leans * (top.heightMm - foot.heightMm) ? undefined : azimuthOf(off);
};

/** The frame of a tree and an aim. */
export const frameOf = (structure: Structure, terms: Terms, aimed: AimedSize): Frame => {
  const heightMm = aimed.heightMm ?? structure.heightMm?.value;
  const leanDeg = leanOf(structure.trunks[0]!);
  const pull = balance(structure.branches.flatMap(({ onTrunk, dead, azimuthDeg, diameterMm }) => (!onTrunk || dead || azimuthDeg === undefined || diameterMm === undefined ? [] : [{ azimuthDeg, diameterMm: diameterMm.value }])));
  const streamDeg = leanDeg ?? (pull.oneSided < weighs ? undefined : pull.towardDeg);
  return {
    structure, terms, aimed,
    ...(heightMm === undefined ? {} : { heightMm }),
    ...(leanDeg === undefined ? {} : { leanDeg }),
    ...(streamDeg === undefined ? {} : { streamDeg }),
  };
};

/** The other trunk that a branch grows toward, within an angle; undefined where it grows toward none, or where trunks stand is not known. */
export const towardTrunk = ({ trunks }: Structure, { trunkId, heightMm, azimuthDeg }: Branch, withinDeg: number): string | undefined => {
  if (azimuthDeg === undefined) return undefined;
  const own = pointAt(trunks.find(({ id }) => id === trunkId)!, heightMm);
  return trunks.find((other) => {
    const end = other.points.at(-1);
    if (other.id === trunkId || end === undefined || end.heightMm < heightMm) return false;
    const there = pointAt(other, heightMm);
    const off = { x: there.sideMm - own.sideMm, y: there.backMm - own.backMm };
    return (off.x !== 0 || off.y !== 0) && angleBetween(azimuthDeg, azimuthOf(off)) <= withinDeg;
  })?.id;
};

import type { Term } from '../../knowledge/aims.js';
import { angleBetween } from '../azimuth.js';
import { areParallel } from '../areParallel.js';
import { meetingOf } from '../crossing.js';
import { areBars, levelCloseness } from '../levelCloseness.js';
import { largestEmptySector } from '../sides.js';
import type { Branch, Fault } from '../tree.js';
import { insideCurve } from '../trunkCurve.js';
import { type Frame, towardTrunk } from './frame.js';

/** What a set of branches is charged for: the term, the branches it is about, what it costs, and the numbers that say why. */
export interface Charge {
  readonly term: Term;
  readonly branches: readonly string[];
  readonly cost: number;
  readonly figures: Readonly<Record<string, number | string>>;
}

const held = (share: number): number => Math.min(1, Math.max(0, share));

const charge = (term: Term, branches: readonly Branch[], cost: number, figures: Charge['figures'] = {}): readonly Charge[] =>
  cost > 0 ? [{ term, branches: branches.map(({ id }) => id), cost, figures }] : [];

const says = ({ faults }: Branch, fault: Fault): boolean => faults.includes(fault);

/** How steep a branch is: measured, or as its owner calls it. */
const pitchOf = (branch: Branch): number | undefined => branch.pitchDeg ?? (says(branch, 'straight-up') ? 90 : says(branch, 'straight-down') ? -90 : undefined);

/** What keeping a branch costs, whatever else is kept. */
export const chargesOfKept = ({ structure, terms, heightMm, streamDeg }: Frame, branch: Branch): readonly Charge[] => {
  const { thick, front, pitch, low, side } = terms;
  const own = [branch];
  const { aspectRatio, azimuthDeg } = branch;
  const ratio = aspectRatio?.value;
  const steep = pitchOf(branch);
  const beyond = steep === undefined ? 0 : Math.max(0, pitch.fromDeg - steep, steep - pitch.toDeg);
  const toFront = azimuthDeg === undefined ? undefined : angleBetween(azimuthDeg, 0);
  const belowEye = heightMm === undefined || branch.heightMm < front.belowShare * heightMm;
  const facing = says(branch, 'toward-front') ? 1 : toFront === undefined || heightMm === undefined ? 0 : held(1 - toFront / front.withinDeg);
  const lowBy = says(branch, 'too-low') ? 1 : heightMm === undefined || low.belowShare === 0 ? 0 : held(1 - branch.heightMm / (low.belowShare * heightMm));
  const trunk = structure.trunks.find(({ id }) => id === branch.trunkId)!;
  const inside = (branch.onTrunk && azimuthDeg !== undefined ? insideCurve(trunk, branch.heightMm, azimuthDeg) : undefined) ?? says(branch, 'inside-curve');
  const other = branch.onTrunk ? towardTrunk(structure, branch, terms['between-trunks'].withinDeg) : undefined;
  const against = streamDeg === undefined || azimuthDeg === undefined ? 0 : angleBetween(azimuthDeg, streamDeg);
  return [
    ...(ratio === undefined ? [] : charge('thick', own, thick.weight * held((ratio - thick.from) / (thick.full - thick.from)), { ratio })),
    ...(branch.onTrunk && belowEye ? charge('front', own, front.weight * facing, { offDeg: toFront ?? 0 }) : []),
    ...(inside ? charge('inside-curve', own, terms['inside-curve'].weight) : []),
    ...(other !== undefined || says(branch, 'between-trunks') ? charge('between-trunks', own, terms['between-trunks'].weight, { trunk: other ?? '' }) : []),
    ...(steep === undefined ? [] : charge('pitch', own, pitch.weight * held(beyond / pitch.spareDeg), { pitchDeg: steep, fromDeg: pitch.fromDeg, toDeg: pitch.toDeg })),
    ...(branch.onTrunk ? charge('low', own, low.weight * lowBy, { heightMm: branch.heightMm, belowMm: low.belowShare * (heightMm ?? 0) }) : []),
    ...(branch.onTrunk ? charge('side', own, (side.weight * (1 - Math.cos((against * Math.PI) / 180))) / 2, { offDeg: against }) : []),
    ...(says(branch, 'crossing') ? charge('crossing', own, terms.crossing.weight) : []),
    ...(says(branch, 'parallel') ? charge('parallel', own, terms.parallel.weight) : []),
  ];
};

/** What keeping two branches side by side costs. */
export const chargesOfPair = ({ structure, terms, aimed, heightMm }: Frame, a: Branch, b: Branch): readonly Charge[] => {
  const two = [a, b];
  const gapMm = Math.abs(a.heightMm - b.heightMm);
  const apart = levelCloseness(structure, a, b, aimed);
  const bar = areBars(structure, a, b, aimed);
  const { over, crossing, parallel } = terms;
  const level = bar === true ? 'bar' : 'crowded';
  const stacked = a.trunkId === b.trunkId && a.onTrunk && b.onTrunk && a.azimuthDeg !== undefined && b.azimuthDeg !== undefined && angleBetween(a.azimuthDeg, b.azimuthDeg) <= over.withinDeg;
  const meeting = meetingOf(structure, a, b);
  const told = (fault: Fault): boolean => says(a, fault) || says(b, fault);
  const crosses = told('crossing') || meeting === undefined ? 0 : meeting.touches ? 1 : meeting.crossesInView ? crossing.inView : 0;
  return [
    ...(apart === undefined || apart >= 1 ? [] : charge(level, two, terms[level].weight * (1 - apart), { gapMm })),
    ...(stacked && heightMm !== undefined && (apart ?? 1) >= 1 ? charge('over', two, over.weight * held(1 - gapMm / (over.gapShare * heightMm)), { gapMm }) : []),
    ...charge('crossing', two, crossing.weight * crosses, { apartMm: meeting?.apartMm ?? 0 }),
    ...(!told('parallel') && areParallel(a, b) === true ? charge('parallel', two, parallel.weight, { gapMm }) : []),
  ];
};

/** What the foliage that goes with a branch costs; `share` is its own, without what grows from it and is charged for itself. */
export const chargesOfFoliage = ({ terms }: Frame, branch: Branch, share: number): readonly Charge[] => charge('foliage', [branch], terms.foliage.weight * share, { share });

/** What the cut of a branch costs. */
export const chargesOfCut = ({ terms }: Frame, branch: Branch): readonly Charge[] => {
  const ratio = branch.aspectRatio?.value;
  return ratio === undefined ? [] : charge('wound', [branch], terms.wound.weight * ratio, { ratio, widthMm: branch.diameterMm?.value ?? 0 });
};

/** What the widest side without a branch costs. The more is kept, the less it can cost; nothing where no side is told. */
export const chargesOfSides = ({ structure, terms }: Frame, kept: readonly Branch[]): readonly Charge[] => {
  const { weight, fromDeg, spareDeg } = terms['empty-side'];
  if (weight === 0) return [];
  const told: number[] = [];
  for (const { onTrunk, azimuthDeg } of kept) if (onTrunk && azimuthDeg !== undefined) told.push(azimuthDeg);
  if (told.length === 0 && structure.branches.every(({ azimuthDeg }) => azimuthDeg === undefined)) return [];
  const sector = largestEmptySector(told) ?? { widthDeg: 360, middleDeg: 0 };
  return charge('empty-side', [], weight * Math.max(0, (sector.widthDeg - fromDeg) / spareDeg), sector);
};

/** The lowest branch on a trunk; of two at one height the one that comes first. */
const lowestOf = (kept: readonly Branch[]): Branch | undefined => {
  let lowest: Branch | undefined;
  for (const branch of kept) if (branch.onTrunk && (lowest === undefined || branch.heightMm < lowest.heightMm)) lowest = branch;
  return lowest;
};

/** What a lowest branch that stands high costs. The more is kept, the less it can cost. */
export const chargesOfHeight = ({ terms, heightMm }: Frame, kept: readonly Branch[]): readonly Charge[] => {
  const { weight, aboveShare, spareShare } = terms.high;
  const lowest = lowestOf(kept);
  if (lowest === undefined || heightMm === undefined) return [];
  const at = lowest.heightMm / heightMm;
  return charge('high', [lowest], weight * held((at - aboveShare) / spareShare), { heightMm: lowest.heightMm, share: at });
};

const numberOf = (kept: readonly Branch[]): number => kept.filter(({ onTrunk }) => onTrunk).length;

/** What more branches than are wanted cost. The fewer are kept, the less it can cost. */
export const chargesOfMany = ({ terms: { many } }: Frame, kept: readonly Branch[]): readonly Charge[] =>
  charge('many', [], many.weight * Math.max(0, numberOf(kept) - many.most), { count: numberOf(kept), most: many.most });

/** What fewer branches than are wanted cost. The more are kept, the less it can cost. */
export const chargesOfFew = ({ terms: { few } }: Frame, kept: readonly Branch[]): readonly Charge[] =>
  charge('few', [], few.weight * Math.max(0, few.least - numberOf(kept)), { count: numberOf(kept), least: few.least });

/** What a lowest branch on the side that the trunk leans to costs; it may rise or fall with what is kept. */
export const chargesOfFirst = ({ terms, leanDeg }: Frame, kept: readonly Branch[]): readonly Charge[] => {
  const lowest = lowestOf(kept);
  if (lowest?.azimuthDeg === undefined || leanDeg === undefined) return [];
  return charge('first-side', [lowest], terms['first-side'].weight * Math.max(0, Math.cos((angleBetween(lowest.azimuthDeg, leanDeg) * Math.PI) / 180)));
};

/** What trunks too few or too many cost. */
export const chargesOfTrunks = ({ terms: { trunks } }: Frame, count: number): readonly Charge[] =>
  charge('trunks', [], trunks.weight * Math.max(0, trunks.least - count, count - trunks.most), { count, least: trunks.least, most: trunks.most });

import { branchFaults } from '../../structure/branchFaults.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import type { Branch, Structure } from '../../structure/tree.js';
import { wordFor } from '../message.js';
import { sideOf } from '../sideOf.js';
import { type Entry, entryOf, mm, percent, saying } from './entry.js';

/** The bands of a branch's thickness beside the trunk: half and 0.83 as published (UF plan, Dahle 2022), the edges between worked out of these. */
const bandOf = (ratio: number): string => (ratio < 0.4 ? 'slender' : ratio < 0.6 ? 'thick' : ratio < 0.83 ? 'competing' : 'co-dominant');

/** What each branch shows by itself: where it stands, how thick it is, what it carries, what is wrong with it. */
export const branchEntries = (structure: Structure, knowledge: Knowledge): readonly Entry[] =>
  structure.branches.flatMap((branch: Branch): readonly Entry[] => {
    const { id, heightMm, azimuthDeg, diameterMm, aspectRatio, foliageShare, budsAtMm, dead } = branch;
    const word = (name: string): string => knowledge.wording[`measure.${name}`]!;
    const faults = branchFaults(branch, structure);
    const gaps = budsAtMm.slice(1).map((bud, i) => bud - budsAtMm[i]!);
    return [
      saying(knowledge, [id], 'stands', heightMm, { branch: id, height: mm(heightMm), side: azimuthDeg === undefined ? word('side.untold') : word(`side.${sideOf(azimuthDeg)}`), dead: dead ? word('dead') : word('living') }),
      ...(diameterMm === undefined ? [] : [entryOf(knowledge, [id], 'thick', diameterMm, { mm: mm(diameterMm.value) })]),
      ...(aspectRatio === undefined ? [] : [entryOf(knowledge, [id], 'ratio', aspectRatio, { ratio: Math.round(aspectRatio.value * 100) / 100, band: word(`band.${bandOf(aspectRatio.value)}`) })]),
      ...(foliageShare === undefined || dead ? [] : [entryOf(knowledge, [id], foliageShare.certainty === 'told' ? 'carries' : 'carries-about', foliageShare, { share: percent(foliageShare.value), least: percent(foliageShare.atLeast), most: percent(foliageShare.atMost) })]),
      ...(faults.length === 0 ? [] : [saying(knowledge, [id], 'faults', faults, { faults: faults.map((fault) => wordFor(fault, knowledge)).join(', ') })]),
      ...(gaps.length === 0 ? [] : [saying(knowledge, [id], 'nodes', gaps, { gap: mm(Math.max(...gaps)) })]),
    ];
  });

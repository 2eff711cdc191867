import type { Measure } from '../../structure/measure.js';
import { diameterAt } from '../../structure/trunkAt.js';
import { type GirthWound, woundedGirthAt } from '../../structure/woundedGirth.js';
import type { Asked, Read } from '../asked.js';
import type { FactValue } from '../factValue.js';
import { workedNumber } from '../workedNumber.js';
import { branchAsked } from './branchAsked.js';
import { takenToo } from './goneInSitting.js';
import { measured } from './measured.js';

const round = (value: number): number => Math.round(value * 1000) / 1000;

/** The girth wounded at the level of a told branch: by this cut, the others of the sitting and old wounds that are still open, where arcs overlap counted once. */
export const girthAtLevel = (read: Read, asked: Asked): FactValue | undefined => {
  const [branch, width] = [branchAsked(asked), read('wound.widthMm')];
  const { structure } = asked.built!;
  if (branch?.onTrunk !== true || width.value === undefined) return undefined;
  const trunk = structure.trunks.find(({ id }) => id === branch.trunkId)!;
  const trunkMm = diameterAt(trunk, branch.heightMm);
  if (trunkMm === undefined || trunkMm.value === 0) return undefined;
  const side = ({ azimuthDeg }: { readonly azimuthDeg?: number }): { readonly azimuthDeg?: number } => (azimuthDeg === undefined ? {} : { azimuthDeg });
  const others = takenToo(asked).filter((other) => other.branch.trunkId === trunk.id && other.branch.onTrunk).flatMap(({ branch: other, written }): readonly GirthWound[] => {
    const diameter = (written['branchDiameterMm'] as number | undefined) ?? other.diameterMm?.value;
    return diameter === undefined ? [] : [{ heightMm: other.heightMm, ...side(other), widthMm: diameter * (asked.knowledge.growing.woundPerBranch[(written['finish'] as string | undefined) ?? 'collar'] ?? 1) }];
  });
  const open = trunk === structure.trunks[0] ? structure.wounds.filter(({ closed }) => !closed) : [];
  const at = (widthMm: number, diameterMm: number): Measure => woundedGirthAt(branch.heightMm, diameterMm, [{ heightMm: branch.heightMm, ...side(branch), widthMm }, ...others, ...open]);
  const sure = at(width.value as number, trunkMm.value);
  const share = workedNumber([width, measured(trunkMm)], (widthMm, diameterMm) => at(widthMm, Math.max(diameterMm, 0.1)).value);
  return sure.atLeast === sure.atMost ? share : { ...share, state: 'estimated', among: { atLeast: round(sure.atLeast), atMost: round(Math.max(sure.atMost, (share.among as { readonly atMost: number } | undefined)?.atMost ?? 0)) }, from: 'estimated' };
};

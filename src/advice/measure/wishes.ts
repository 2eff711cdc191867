import type { Message, Proposal } from '../../contract/types.generated.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { trunkBelowMm } from '../../structure/foliageShares.js';
import type { Branch, Structure } from '../../structure/tree.js';
import { diameterAt } from '../../structure/trunkAt.js';
import { message } from '../message.js';

/** Sections of branches and top over that of the trunk below: beyond this something was measured wrongly. */
const tooMuch = 1.6;

/** What would tell most next, the most telling first; each once, with the branches that it is asked of. */
export const wishesOf = (structure: Structure, { aim }: Proposal['tree'], knowledge: Knowledge): readonly Message[] => {
  const living = structure.branches.filter(({ dead, onTrunk }) => !dead && onTrunk);
  const lacking = (wish: string, lacks: (branch: Branch) => boolean): readonly Message[] => {
    const branches = living.filter(lacks);
    return branches.length === 0 ? [] : [message(knowledge, `measure.wish.${wish}`, { branches: branches.map(({ id }) => id).join(', ') })];
  };
  const when = (wish: string, lacks: boolean): readonly Message[] => (lacks ? [message(knowledge, `measure.wish.${wish}`)] : []);
  const main = structure.trunks[0]!;
  const top = diameterAt(main, living.at(-1)?.heightMm ?? 0)?.value;
  const sizes = living.flatMap(({ diameterMm }) => (diameterMm === undefined ? [] : [diameterMm.value]));
  const sum = structure.trunks.length === 1 && top !== undefined && structure.baseMm !== undefined && main.pointsTold ? (trunkBelowMm([...sizes, top]) / structure.baseMm.value) ** 2 : 0;
  return [
    ...when('again', sum > tooMuch),
    ...when('branches', structure.branches.length === 0),
    ...when('points', !main.pointsTold),
    ...when('height', structure.heightMm?.certainty !== 'told'),
    ...lacking('thickness', ({ diameterMm }) => diameterMm === undefined),
    ...lacking('side', ({ azimuthDeg }) => azimuthDeg === undefined),
    ...lacking('foliage', ({ foliageShare }) => foliageShare?.certainty === 'estimated' && foliageShare.atLeast < 0.25 && foliageShare.atMost > 0.25),
    ...lacking('line', ({ lengthMm, pitchDeg, azimuthDeg }) => azimuthDeg !== undefined && (lengthMm === undefined || pitchDeg === undefined)),
    ...when('curve', main.pointsTold && !main.lineTold),
    ...when('aim', aim?.trunkDiameterMm === undefined || aim.heightMm === undefined),
  ];
};

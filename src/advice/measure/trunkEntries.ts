import type { Proposal } from '../../contract/types.generated.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { customaryHeights } from '../../structure/spacing.js';
import { levelsOf } from '../../structure/levels.js';
import { inverseTapers, tapersOf } from '../../structure/taper.js';
import { sacrificeWorth, sectionGained, yearsToHalf } from '../../structure/thickening.js';
import type { Structure } from '../../structure/tree.js';
import { diameterAt } from '../../structure/trunkAt.js';
import { woundedGirthAt } from '../../structure/woundedGirth.js';
import { notKnown } from '../message.js';
import { type Entry, entryOf, mm, percent, saying } from './entry.js';

const years = 3;

const tapers = (structure: Structure, knowledge: Knowledge): readonly Entry[] =>
  structure.trunks.flatMap((trunk): readonly Entry[] => {
    const thicker = inverseTapers(structure, trunk);
    if (thicker === undefined) return [];
    const steps = tapersOf(trunk).map((taper) => Math.round(taper * 1000) / 1000);
    return [
      saying(knowledge, [trunk.id], 'taper', steps, { trunk: trunk.id, steps: steps.map((step) => mm(step * 100)).join(', ') }),
      ...thicker.map(({ heightMm, thicker: by, bulge }) => saying(knowledge, [trunk.id], bulge === undefined ? 'inverse' : 'bulge', Math.round((bulge ?? by) * 1000) / 1000, { height: mm(heightMm), by: percent((bulge ?? by) - 1) })),
    ];
  });

/** What sacrifice branches win, and when they must go; only where last season's thickening was measured. */
const sacrifices = (structure: Structure, { trunk }: Proposal['tree'], knowledge: Knowledge): readonly Entry[] => {
  const gained = trunk?.thickenedMm;
  if (gained === undefined || gained === 0 || structure.baseMm === undefined) return [];
  const section = sectionGained(structure.baseMm.value, gained);
  return structure.branches.filter(({ role, onTrunk }) => role === 'sacrifice' && onTrunk).flatMap(({ id, diameterMm, foliageShare, trunkId, heightMm }): readonly Entry[] => {
    const hereMm = diameterAt(structure.trunks.find((each) => each.id === trunkId)!, heightMm)?.value;
    if (diameterMm === undefined || foliageShare === undefined || hereMm === undefined) return [];
    const { gainMm } = sacrificeWorth(hereMm, section, foliageShare.value, years);
    const left = yearsToHalf(diameterMm.value, hereMm, gained, gained);
    return [saying(knowledge, [id], 'sacrifice', [Math.round(gainMm * 10) / 10, ...(left === undefined ? [] : [Math.round(left * 10) / 10])], { branch: id, years, gain: mm(gainMm), left: left === undefined ? notKnown : mm(left) })];
  });
};

const wounds = ({ wounds: all, trunks }: Structure, knowledge: Knowledge): readonly Entry[] => {
  const open = all.filter(({ closed }) => !closed);
  return open.flatMap(({ heightMm }): readonly Entry[] => {
    const trunkMm = diameterAt(trunks[0]!, heightMm)?.value;
    return trunkMm === undefined || trunkMm === 0 ? [] : [entryOf(knowledge, [trunks[0]!.id], 'wounded', woundedGirthAt(heightMm, trunkMm, open), { height: mm(heightMm), share: percent(woundedGirthAt(heightMm, trunkMm, open).value) })];
  });
};

/** What trunks show: size, taper, wounds, where branches begin and where custom would set them. */
export const trunkEntries = (structure: Structure, tree: Proposal['tree'], knowledge: Knowledge): readonly Entry[] => {
  const { baseMm, heightMm } = structure;
  const kept = structure.branches.filter(({ onTrunk, dead, role }) => onTrunk && !dead && role !== 'sacrifice');
  const first = kept[0];
  const wholeMm = Math.max(tree.aim?.heightMm ?? 0, heightMm?.value ?? 0);
  const levels = levelsOf(structure, kept).filter((level) => level[0]!.trunkId === structure.trunks[0]!.id).length;
  const low = heightMm === undefined ? [] : kept.filter((branch) => branch.heightMm <= (2 / 3) * heightMm.value);
  return [
    ...(baseMm === undefined ? [] : [entryOf(knowledge, ['tree'], 'base', baseMm, { mm: mm(baseMm.value) })]),
    ...(heightMm === undefined ? [] : [entryOf(knowledge, ['tree'], heightMm.certainty === 'told' ? 'height' : 'height-about', heightMm, { mm: mm(heightMm.value) })]),
    ...(baseMm === undefined || heightMm === undefined ? [] : [saying(knowledge, ['tree'], 'slender', Math.round((heightMm.value / baseMm.value) * 10) / 10, { ratio: mm(heightMm.value / baseMm.value) })]),
    ...tapers(structure, knowledge),
    ...(first === undefined || wholeMm === 0 ? [] : [saying(knowledge, [first.id], 'first', Math.round((first.heightMm / wholeMm) * 1000) / 1000, { branch: first.id, share: percent(first.heightMm / wholeMm) })]),
    ...(low.length === 0 || kept.some(({ foliageShare }) => foliageShare === undefined) ? [] : [saying(knowledge, ['tree'], 'low-foliage', Math.round(low.reduce((sum, { foliageShare }) => sum + foliageShare!.value, 0) * 1000) / 1000, { share: percent(low.reduce((sum, { foliageShare }) => sum + foliageShare!.value, 0)) })]),
    ...(tree.aim?.heightMm === undefined || levels < 3 ? [] : [saying(knowledge, ['tree'], 'custom', customaryHeights(wholeMm, wholeMm / 3, wholeMm / 10, levels).map(Math.round), { heights: customaryHeights(wholeMm, wholeMm / 3, wholeMm / 10, levels).map(Math.round).join(', '), count: levels })]),
    ...wounds(structure, knowledge),
    ...sacrifices(structure, tree, knowledge),
  ];
};

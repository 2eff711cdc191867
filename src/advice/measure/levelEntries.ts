import type { Proposal } from '../../contract/types.generated.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { knotOf, mostAtLevel, swellsFrom } from '../../structure/knot.js';
import { areBars, levelCloseness } from '../../structure/levelCloseness.js';
import { levelsOf } from '../../structure/levels.js';
import { told } from '../../structure/measure.js';
import { largestEmptySector, balance } from '../../structure/sides.js';
import type { Branch, Structure } from '../../structure/tree.js';
import { diameterAt } from '../../structure/trunkAt.js';
import { falseWhorls, whorlYears } from '../../structure/whorlYears.js';
import { type Entry, entryOf, percent, saying } from './entry.js';

type Aim = NonNullable<Proposal['tree']['aim']>;

const named = (branches: readonly Branch[]): string => branches.map(({ id }) => id).join(', ');

/** Levels of several branches, and whether their collars choke the trunk. */
const knots = (structure: Structure, branches: readonly Branch[], knowledge: Knowledge): readonly Entry[] =>
  levelsOf(structure, branches).filter((level) => level.length > 1).flatMap((level): readonly Entry[] => {
    const ids = level.map(({ id }) => id);
    const sizes = level.flatMap(({ diameterMm }) => (diameterMm === undefined ? [] : [diameterMm.value]));
    const trunkMm = diameterAt(structure.trunks.find(({ id }) => id === level[0]!.trunkId)!, level[0]!.heightMm)?.value;
    const one = saying(knowledge, ids, 'level', ids, { branches: named(level), height: Math.round(level.reduce((sum, { heightMm }) => sum + heightMm, 0) / level.length), count: level.length });
    if (trunkMm === undefined || trunkMm === 0 || sizes.length < level.length) return [one];
    const { collarShare } = knotOf(sizes, trunkMm);
    const mean = sizes.reduce((sum, size) => sum + size, 0) / sizes.length;
    return [one, entryOf(knowledge, ids, collarShare > swellsFrom ? 'swells' : level.length >= 3 ? 'crowded' : 'collars', { ...told(collarShare), certainty: 'worked-out' }, { share: percent(collarShare), most: mostAtLevel(mean / trunkMm) })];
  });

/** Pairs that are bars, or that will be once the trunk is as thick as it is to be. */
const pairs = (structure: Structure, branches: readonly Branch[], aim: Aim, knowledge: Knowledge): readonly Entry[] =>
  branches.flatMap((one, i) => branches.slice(i + 1).flatMap((other): readonly Entry[] => {
    const [now, then] = [levelCloseness(structure, one, other), levelCloseness(structure, one, other, aim)];
    const params = { one: one.id, other: other.id };
    if (areBars(structure, one, other) === true) return [saying(knowledge, [one.id, other.id], 'bar', true, params)];
    return now !== undefined && now >= 1 && then !== undefined && then < 1 ? [saying(knowledge, [one.id, other.id], 'level-later', Math.round(then * 100) / 100, params)] : [];
  }));

const around = (branches: readonly Branch[], knowledge: Knowledge): readonly Entry[] => {
  const sided = branches.flatMap(({ azimuthDeg, diameterMm }) => (azimuthDeg === undefined || diameterMm === undefined ? [] : [{ azimuthDeg, diameterMm: diameterMm.value }]));
  if (sided.length < 3 || sided.length < branches.length) return [];
  const { widthDeg, middleDeg } = largestEmptySector(sided.map(({ azimuthDeg }) => azimuthDeg))!;
  const { oneSided } = balance(sided);
  return [saying(knowledge, ['tree'], 'empty', Math.round(widthDeg), { width: Math.round(widthDeg), middle: Math.round(middleDeg) }), saying(knowledge, ['tree'], 'balance', Math.round(oneSided * 100) / 100, { share: percent(oneSided) })];
};

/** The years that marked whorls tell. */
const years = (structure: Structure, branches: readonly Branch[], knowledge: Knowledge): readonly Entry[] => {
  const whorls = levelsOf(structure, branches).filter((level) => level.length >= 2 && level[0]!.trunkId === structure.trunks[0]!.id).map((level) => ({ heightMm: level[0]!.heightMm, members: level.length }));
  if (whorls.length < 3) return [];
  const [least, most] = whorlYears(whorls);
  return [saying(knowledge, ['tree'], 'years', [least, most], { least, most, twice: falseWhorls(whorls).length })];
};

/** What branches show together: levels, bars, sides, and on whorled trees years. */
export const levelEntries = (structure: Structure, aim: Aim, whorled: boolean, knowledge: Knowledge): readonly Entry[] => {
  const branches = structure.branches.filter(({ onTrunk, dead }) => onTrunk && !dead);
  return [...knots(structure, branches, knowledge), ...pairs(structure, branches, aim, knowledge), ...around(branches, knowledge), ...(whorled ? years(structure, branches, knowledge) : [])];
};

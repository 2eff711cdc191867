import { pipeShares, shareRange } from './foliageShares.js';
import { type Measure, told } from './measure.js';
import type { Branch, Structure } from './tree.js';
import { diameterAt } from './trunkAt.js';

const squared = (sum: number, diameter: number): number => sum + diameter ** 2;

/** The tops of the trunks: what each is above its highest living branch, as far as it is known. A branch that leads where the trunk ends is a top itself. */
const topsMm = ({ trunks, branches }: Structure): readonly (Measure | undefined)[] =>
  trunks.flatMap((trunk) => {
    const own = branches.filter((branch) => branch.onTrunk && branch.trunkId === trunk.id && !branch.dead);
    const highest = own.at(-1);
    const end = trunk.pointsTold ? (trunk.points.at(-1)?.heightMm ?? 0) : Infinity;
    if (highest?.role === 'leader' && highest.heightMm >= end) return [];
    return [diameterAt(trunk, highest?.heightMm ?? 0)];
  });

/** The share of a branch whose own was not told, of what is left by those that were: nine of ten lie in its range. */
const estimate = (branch: Branch, others: readonly Branch[], tops: readonly (Measure | undefined)[], left: number): Measure | undefined => {
  const own = branch.diameterMm;
  if (own === undefined) return undefined;
  const beside = others.filter((other) => other !== branch);
  const members = [...beside.map(({ diameterMm }) => diameterMm), ...tops];
  const known = members.filter((member) => member !== undefined);
  /* One of unknown thickness is taken to be like the others; at least nothing, at most as thick as all of them together. */
  const unknown = members.length - known.length;
  const whole = (of: 'value' | 'atMost'): number => [own, ...known].map((member) => member[of]).reduce(squared, 0);
  const [mean, most] = [Math.sqrt(whole('value') / (known.length + 1)), Math.sqrt(whole('atMost'))];
  const share = (mine: number, each: number, of: 'value' | 'atLeast' | 'atMost'): number =>
    left * pipeShares([mine, ...known.map((member) => member[of]), ...Array.from({ length: unknown }, () => each)])[0]!;
  return {
    value: share(own.value, mean, 'value'),
    atLeast: shareRange(share(own.atLeast, most, 'atMost')).atLeast,
    atMost: Math.min(left, shareRange(share(own.atMost, 0, 'atLeast')).atMost),
    certainty: 'estimated',
  };
};

/** The share of a branch on a branch: of its bearer's, by their sections. */
const shareOnBranch = (branch: Branch, bearer: Branch): Measure | undefined => {
  const whole = bearer.foliageShare;
  if (whole === undefined || branch.diameterMm === undefined || bearer.diameterMm === undefined || bearer.diameterMm.value === 0) return undefined;
  const part = Math.min(0.999, (branch.diameterMm.value / bearer.diameterMm.value) ** 2);
  const range = shareRange(part);
  return { value: whole.value * part, atLeast: whole.atLeast * range.atLeast, atMost: whole.atMost * range.atMost, certainty: 'estimated' };
};

/** The structure with a share of foliage for each branch whose diameter is known: the told one, none for a dead one, else by the pipe model. */
export const withFoliageShares = (structure: Structure): Structure => {
  const { branches } = structure;
  const onTrunks = branches.filter((branch) => branch.onTrunk && !branch.dead);
  const left = Math.max(0, 1 - onTrunks.reduce((sum, { foliageShare }) => sum + (foliageShare?.value ?? 0), 0));
  const open = onTrunks.filter(({ foliageShare }) => foliageShare === undefined);
  const tops = topsMm(structure);
  const shared = new Map<string, Branch>();
  const withShare = (branch: Branch): Branch => {
    const kept = shared.get(branch.id);
    if (kept !== undefined) return kept;
    const share = branch.dead ? told(0) : (branch.foliageShare ?? (branch.onTrunk ? estimate(branch, open, tops, left) : shareOnBranch(branch, withShare(branches.find(({ id }) => id === branch.from)!))));
    const whole = share === undefined ? branch : { ...branch, foliageShare: share };
    shared.set(branch.id, whole);
    return whole;
  };
  return { ...structure, branches: branches.map(withShare) };
};

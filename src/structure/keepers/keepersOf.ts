import { diameterAt } from '../trunkAt.js';
import type { Branch, Structure, Trunk } from '../tree.js';
import { trunkAsBranch } from '../trunkAsBranch.js';
import { bestSets, type Search } from './bestSets.js';
import type { Charge } from './charges.js';
import type { Frame } from './frame.js';
import { membersOf } from './bits.js';
import type { Limits } from './sittings.js';
import { type Choice, weigh, type Weighed } from './weigh.js';

/** A leader to cut back to: the branch that leads on, and the trunk that is cut just above it. */
export interface Leader {
  readonly branch: string;
  readonly heightMm: number;
}

/** A set of branches worth keeping, with what it costs and why. */
export interface KeptSet {
  readonly keep: readonly string[];
  readonly remove: readonly string[];
  /** Those that are cut, sitting by sitting; what grows from them goes with them. */
  readonly sittings: readonly (readonly string[])[];
  readonly leader?: Leader;
  readonly cost: number;
  readonly charges: readonly Charge[];
  /** Of each that goes, what keeping it beside the others would be charged for. */
  readonly spared: readonly { readonly branch: string; readonly charges: readonly Charge[] }[];
}

export interface KeepersQuestion {
  readonly frame: Frame;
  readonly limits: Limits;
  readonly years: number;
  /** Kept or taken away whatever it costs, by id. */
  readonly locked: ReadonlyMap<string, 'kept' | 'gone'>;
  /** Branches that stay for now and are no part of the tree that is aimed at. */
  readonly aside: ReadonlySet<string>;
  /** Branches that may take over as the leader; with `mustLead` one of them has to. */
  readonly leaders: readonly string[];
  readonly mustLead?: boolean;
  /** Sets that may not all be taken away. */
  readonly forbidden: readonly (readonly string[])[];
  readonly equal: number;
  readonly told: number;
}

const sum = (values: readonly number[]): number => values.reduce((all, value) => all + value, 0);

const isOn = (structure: Structure, branch: Branch, trunkId: string): boolean => {
  for (let id: string | undefined = branch.trunkId; id !== undefined; id = structure.trunks.find((trunk) => trunk.id === id)?.from) if (id === trunkId) return true;
  return false;
};

/** A trunk beside the main one as a branch, with its share of the foliage: what it bears, and of what no branch bears its part by section. */
const bearingTrunk = (structure: Structure, trunk: Trunk): Branch => {
  const { trunks, branches } = structure;
  const top = (each: Trunk): number => (diameterAt(each, branches.findLast((branch) => branch.onTrunk && branch.trunkId === each.id)?.heightMm ?? each.points.at(-1)?.heightMm ?? 0)?.value ?? 0) ** 2;
  const borne = (of: readonly Branch[]): number => sum(of.filter(({ onTrunk }) => onTrunk).map(({ foliageShare }) => foliageShare?.value ?? 0));
  const part = top(trunk) / (sum(trunks.map(top)) || 1);
  const share = borne(branches.filter((branch) => isOn(structure, branch, trunk.id))) + part * Math.max(0, 1 - borne(branches));
  return { ...trunkAsBranch(structure, trunk), foliageShare: { value: share, atLeast: 0, atMost: 1, certainty: 'estimated' } };
};

/** All that may be kept or taken away, in the order of their ids; what stands aside is no choice. */
export const choicesOf = ({ frame: { structure }, locked, aside }: KeepersQuestion, leader: Branch | undefined): readonly Choice[] => {
  const trunks = structure.trunks.slice(1).map((trunk) => bearingTrunk(structure, trunk));
  const isTrunk = new Set(trunks.map(({ id }) => id));
  const all = [...structure.branches, ...trunks].filter(({ id }) => !aside.has(id));
  const ids = new Set(all.map(({ id }) => id));
  const topped = (branch: Branch): boolean => leader !== undefined && branch.id !== leader.id && branch.onTrunk && branch.trunkId === leader.trunkId && branch.heightMm >= leader.heightMm;
  return all.map((branch): Choice => {
    const parent = ids.has(branch.from) ? branch.from : undefined;
    const onIt = all.filter(({ from }) => from === branch.id);
    const lock = branch.id === leader?.id ? 'kept' : topped(branch) ? 'gone' : locked.get(branch.id);
    return {
      branch, isTrunk: isTrunk.has(branch.id),
      ownShare: Math.max(0, (branch.foliageShare?.value ?? 0) - sum(onIt.map(({ foliageShare }) => foliageShare?.value ?? 0))),
      ...(parent === undefined ? {} : { parent }), ...(lock === undefined ? {} : { locked: lock }),
      ...(branch.id === leader?.id ? { leads: true } : {}), ...(topped(branch) ? { withTop: true } : {}),
    };
  }).sort((a, b) => (a.branch.id < b.branch.id ? -1 : 1));
};

/** What the trunk as it ends costs: too tall for the aim, a top that is cut off, a leader that is thin beside what it takes over from. */
const chargesOfTop = ({ structure, terms, aimed }: Frame, leader: Branch | undefined, topShare: number): readonly Charge[] => {
  const rise = leader?.lengthMm === undefined || leader.pitchDeg === undefined ? 0 : leader.lengthMm * Math.max(0, Math.sin((leader.pitchDeg * Math.PI) / 180));
  const heightMm = leader === undefined ? structure.heightMm?.value : leader.heightMm + rise;
  const tall = heightMm === undefined || aimed.heightMm === undefined ? 0 : Math.max(0, heightMm / aimed.heightMm - 1);
  const charges: Charge[] = [];
  if (tall > 0) charges.push({ term: 'tall', branches: [], cost: terms.tall.weight * tall, figures: { heightMm: heightMm!, aimMm: aimed.heightMm! } });
  if (leader === undefined) return charges;
  const ratio = leader.aspectRatio?.value ?? 0;
  if (ratio < 1) charges.push({ term: 'stump', branches: [leader.id], cost: terms.stump.weight * (1 - ratio), figures: { ratio, heightMm: leader.heightMm } });
  charges.push({ term: 'wound', branches: [leader.id], cost: terms.wound.weight, figures: { ratio: 1, widthMm: diameterAt(structure.trunks.find(({ id }) => id === leader.trunkId)!, leader.heightMm)?.value ?? 0 } });
  if (topShare > 0) charges.push({ term: 'foliage', branches: [leader.id], cost: terms.foliage.weight * topShare, figures: { share: topShare } });
  return charges;
};

interface Way {
  readonly leader: Branch | undefined;
  readonly choices: readonly Choice[];
  readonly weighed: Weighed;
  readonly top: readonly Charge[];
  readonly search: Search;
}

/**
 * The sets of branches worth keeping, best first, with those that are as good: an exact search over each leader that may be.
 *
 * What is charged stands in shared/aims.yaml, what is borne in the rules.
 */
export const keepersOf = (question: KeepersQuestion): { readonly sets: readonly KeptSet[]; readonly looked: number; readonly complete: boolean } => {
  const { frame, limits, years, leaders, mustLead, forbidden, equal, told } = question;
  const { structure } = frame;
  const borne = sum(structure.branches.filter(({ onTrunk }) => onTrunk).map(({ foliageShare }) => foliageShare?.value ?? 0));
  const candidates = [...(mustLead === true ? [] : [undefined]), ...[...leaders].sort().map((id) => structure.branches.find((branch) => branch.id === id)!)];
  const ways: Way[] = [];
  let best = Infinity;
  for (const leader of candidates) {
    const choices = choicesOf(question, leader);
    const top = chargesOfTop(frame, leader, structure.trunks.length === 1 ? Math.max(0, 1 - borne) : 0);
    const ahead = sum(top.map(({ cost }) => cost));
    const weighed = weigh(frame, choices, limits, years, forbidden);
    const search = bestSets(weighed.weighing, equal, told, best + equal - ahead);
    best = Math.min(best, ahead + (search.sets[0]?.cost ?? Infinity));
    ways.push({ leader, choices, weighed, top, search });
  }
  const sets = ways.flatMap(({ leader, choices, weighed, top, search }) => search.sets.map((set): KeptSet => {
    const ids = choices.map(({ branch }) => branch.id);
    const keep = membersOf(ids, set.kept);
    return {
      keep, remove: ids.filter((id) => !keep.includes(id)),
      sittings: weighed.sittingsOf(set.kept).map((sitting) => membersOf(ids, sitting)),
      ...(leader === undefined ? {} : { leader: { branch: leader.id, heightMm: leader.heightMm } }),
      cost: Math.round((set.cost + sum(top.map(({ cost }) => cost))) * 1e9) / 1e9,
      charges: [...top, ...weighed.chargesOf(set.kept)],
      spared: choices.flatMap(({ branch, withTop }, i) => (keep.includes(branch.id) || withTop === true ? [] : [{ branch: branch.id, charges: branch.dead ? [] : weighed.chargesOfOneMore(set.kept, i) }])),
    };
  })).sort((a, b) => a.cost - b.cost || b.keep.length - a.keep.length || (a.keep.join('\n') < b.keep.join('\n') ? -1 : 1));
  return { sets: sets.filter(({ cost }) => cost <= sets[0]!.cost + equal + 1e-9).slice(0, told), looked: sum(ways.map(({ search }) => search.looked)), complete: ways.every(({ search }) => search.complete) };
};

import type { Message, Proposal } from '../../contract/types.generated.js';
import { SparebudError } from '../../knowledge/error.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { mostChoices } from '../../structure/keepers/bestSets.js';
import type { Leader } from '../../structure/keepers/keepersOf.js';
import type { Branch, Structure } from '../../structure/tree.js';
import { trunkAsBranch } from '../../structure/trunkAsBranch.js';
import { findingsOf } from '../findings.js';
import { message } from '../message.js';
import type { Ready } from '../ready.js';
import { summaryOf } from '../summary.js';
import { bestDay } from './bestDay.js';

type Operation = Proposal['operation'];

/** What is no matter of choice: branches that stand aside, that stay or go whatever it costs, and those that may lead. */
export interface Held {
  readonly aside: ReadonlySet<string>;
  readonly locked: ReadonlyMap<string, 'kept' | 'gone'>;
  readonly leaders: readonly string[];
  readonly mustLead: boolean;
  readonly notices: readonly Message[];
}

/** The cut through the trunk just above a branch that is to lead. */
export const chopTo = ({ branch, heightMm }: Leader, { branches }: Structure): Operation => {
  const widthMm = branches.find(({ id }) => id === branch)?.diameterMm?.value;
  return { op: 'trunk-chop', heightMm, foliageLeft: true, ...(widthMm === undefined ? {} : { branchDiameterMm: widthMm }) };
};

/** Taking a branch, or a trunk beside the main one. */
export const removal = (branch: string): Operation => ({ op: 'remove-branch', branch });

/** A branch that thickens the trunk stays aside while the trunk lacks some of what it is meant to get. */
const standsAside = ({ role, dead }: Branch, { baseMm }: Structure, aimMm: number | undefined): boolean =>
  role === 'sacrifice' && !dead && aimMm !== undefined && baseMm !== undefined && aimMm > baseMm.value;

const lockOf = ({ dead, role, foliageShare, aspectRatio }: Branch): 'kept' | 'gone' | undefined => {
  if (dead || role === 'sacrifice') return 'gone';
  if (role === 'keep' || role === 'leader') return 'kept';
  return foliageShare === undefined || aspectRatio === undefined ? 'kept' : undefined;
};

/**
 * Finds what is held by its owner, by what is not known, or by the rules on every day of the next fourteen months.
 *
 * @throws SparebudError where more branches are told than can be weighed
 */
export const heldBranches = async (asked: (operation: Operation) => Promise<Ready>, knowledge: Knowledge, structure: Structure, aim: Proposal['tree']['aim'], date: string): Promise<Held> => {
  const notices: Message[] = [];
  const say = (id: string, params: Readonly<Record<string, string | number>>): void => { notices.push(message(knowledge, `keepers.${id}`, params)); };
  const aside = new Set(structure.branches.filter((branch) => standsAside(branch, structure, aim?.trunkDiameterMm)).map(({ id }) => id));
  const locked = new Map(structure.branches.flatMap((branch) => { const lock = aside.has(branch.id) ? undefined : lockOf(branch); return lock === undefined ? [] : [[branch.id, lock] as const]; }));
  for (const id of aside) say('aside', { branch: id, mm: aim!.trunkDiameterMm! });
  const choices = structure.branches.length - aside.size + structure.trunks.length - 1;
  if (choices > mostChoices) throw new SparebudError([{ code: 'too-large', path: 'tree.structure.branches', message: `${choices} branches in \`tree.structure\` are more than can be weighed`, found: choices, help: `tell the ${mostChoices} that matter most; twigs of a branch need not be told` }]);

  /* What the rules advise against on its best day is not taken. */
  const advisedAgainst = async (operation: Operation): Promise<Message | undefined> => {
    const each = await asked(operation);
    if ((await each.judge()).verdict !== 'advise-against') return undefined;
    const best = await bestDay(each, date);
    if (best.verdict !== 'advise-against') return undefined;
    const judged = await each.judge();
    return summaryOf(judged, [...findingsOf(judged, knowledge, each.prepared.species)], knowledge);
  };
  for (const { id, foliageShare, aspectRatio } of structure.branches) if (foliageShare === undefined || aspectRatio === undefined) say('unmeasured', { branch: id });
  for (const { id, dead, role } of [...structure.branches, ...structure.trunks.slice(1).map((trunk) => trunkAsBranch(structure, trunk))]) {
    if (aside.has(id) || dead || locked.get(id) === 'kept') continue;
    const against = await advisedAgainst(removal(id));
    if (against === undefined) continue;
    locked.set(id, 'kept');
    say(role === 'sacrifice' ? 'sacrifice-against' : 'against', { branch: id, why: against.text });
  }

  /* A shorter tree, or a leader that its owner has marked, asks where the trunk is cut. */
  const marked = structure.branches.filter(({ role, onTrunk, heightMm, trunkId }) => role === 'leader' && onTrunk && (structure.trunks.find(({ id }) => id === trunkId)!.points.at(-1)?.heightMm ?? 0) > heightMm);
  const tooTall = aim?.heightMm !== undefined && structure.heightMm !== undefined && structure.heightMm.value > aim.heightMm;
  const mayLead = marked.length > 0 ? marked : tooTall ? structure.branches.filter(({ id, onTrunk, dead, role, trunkId, aspectRatio }) => onTrunk && !dead && role !== 'sacrifice' && trunkId === structure.trunks[0]!.id && aspectRatio !== undefined && !aside.has(id)) : [];
  const leaders: string[] = [];
  for (const { id, heightMm } of mayLead) if ((await advisedAgainst(chopTo({ branch: id, heightMm }, structure))) === undefined) leaders.push(id);
  if (mayLead.length > leaders.length) say('leader-against', { count: mayLead.length - leaders.length });
  return { aside, locked, leaders, mustLead: marked.length > 0 && leaders.length > 0, notices };
};

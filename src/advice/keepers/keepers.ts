import type { Message, Proposal } from '../../contract/types.generated.js';
import type { Aims, Term } from '../../knowledge/aims.js';
import { checkKeepers, type KeepersQuestion as Question } from '../../knowledge/checkKeepers.js';
import { SparebudError } from '../../knowledge/error.js';
import type { Knowledge, Verdict } from '../../knowledge/knowledge.js';
import type { Charge } from '../../structure/keepers/charges.js';
import { frameOf, termsFor } from '../../structure/keepers/frame.js';
import { type KeepersQuestion, keepersOf, type KeptSet, type Leader } from '../../structure/keepers/keepersOf.js';
import type { Limits } from '../../structure/keepers/sittings.js';
import { readStructure } from '../../structure/readStructure.js';
import { message } from '../message.js';
import type { Ready } from '../ready.js';
import { chargeText } from './chargeText.js';
import { chopTo, heldBranches, removal } from './heldBranches.js';
import { type JudgedStage, judgeStages } from './judgeStages.js';
import { ruleLimits } from './ruleLimits.js';

type Operation = Proposal['operation'];

/** One sitting of a set: what is taken on a day, or what the trunk is cut back to, and how the rules judge it. */
export interface KeepersStage {
  readonly date: string;
  readonly remove: readonly string[];
  readonly leader?: Leader;
  readonly verdict: Verdict;
  readonly because: Message;
}

/** What a set is charged for. */
export interface KeepersPart {
  readonly term: Term;
  readonly branches: readonly string[];
  readonly cost: number;
  readonly why: Message;
}

export interface KeepersSet {
  readonly keep: readonly string[];
  readonly remove: readonly string[];
  /** The branch that leads on once the trunk is cut back to it. */
  readonly leader?: Leader;
  readonly stages: readonly KeepersStage[];
  readonly cost: number;
  readonly parts: readonly KeepersPart[];
  /** What keeping each that goes would be charged for, beside those that stay: why it goes. */
  readonly spared: readonly { readonly branch: string; readonly parts: readonly KeepersPart[] }[];
}

/** The sets of branches worth keeping for an aim, the best first; those within a hair of it are told as ties. */
export interface Keepers {
  readonly schema: 'keepers/1';
  readonly id?: string | number;
  readonly aim: Message;
  readonly sets: readonly KeepersSet[];
  readonly ties: readonly { readonly set: number; readonly dearerBy: number; readonly why: Message }[];
  readonly notices: readonly Message[];
  readonly meta?: Readonly<Record<string, unknown>>;
}

/** How often sets that the rules advise against are ruled out, and the next best sought, before less is taken. */
const rounds = 2;

/** How much of what one sitting bears is taken: less where all that was tried is advised against as a whole. */
const taking = [1, 0.85, 0.7, 0.5, 0.25, 0];

/** A part of what one sitting bears. */
const lessOf = ({ girthShareInAll, ...ofOne }: Limits, part: number): Limits => ({
  ...Object.fromEntries(Object.entries(ofOne).map(([name, limit]) => [name, limit * part])), ...(girthShareInAll === undefined ? {} : { girthShareInAll }),
});

const fine = (cost: number): number => Math.round(cost * 1000) / 1000;

/**
 * Which branches to keep, and in which sittings the others go.
 *
 * @throws SparebudError where the question cannot be understood, the structure cannot be, or more than 30 branches are to be chosen from
 */
export const keepersFor = async (ready: (written: unknown) => Promise<Ready>, knowledge: Knowledge, written: unknown): Promise<Keepers> => {
  const question: Question = checkKeepers(written, knowledge);
  const { tree, where, date, ignore } = question;
  const aims: Aims = knowledge.aims;
  const structure = readStructure(tree.structure!, tree);
  const style = tree.aim?.style;
  const say = (id: string, params: Readonly<Record<string, string | number>> = {}): Message => message(knowledge, `keepers.${id}`, params);
  const around = { tree, ...(where === undefined ? {} : { where }), ...(ignore === undefined ? {} : { ignore }), date };
  const asked = async (operation: Operation): Promise<Ready> => await ready({ ...around, operation });

  const { aside, locked, leaders, mustLead, notices: heldFor } = await heldBranches(asked, knowledge, structure, tree.aim, date);
  const notices = [...heldFor];
  const first = structure.branches.find(({ id, dead }) => !dead && locked.get(id) !== 'kept') ?? structure.branches[0]!;
  const limits = await ruleLimits(await asked(removal(first.id)));
  const years = question.years ?? aims.years;
  const forbidden: (readonly string[])[] = [];
  const base: Omit<KeepersQuestion, 'forbidden'> = {
    frame: frameOf(structure, termsFor(aims, style), { ...(tree.aim?.heightMm === undefined ? {} : { heightMm: tree.aim.heightMm }), ...(tree.aim?.trunkDiameterMm === undefined ? {} : { trunkDiameterMm: tree.aim.trunkDiameterMm }) }),
    limits, years, locked, aside, leaders, mustLead, equal: aims.equal, told: aims.told,
  };

  const isAgainst = ({ verdict, operations }: JudgedStage): boolean => verdict === 'advise-against' && operations.some(({ branch }) => branch !== undefined && locked.get(branch) !== 'gone');
  /* A sitting that the rules advise against is halved, as long as there are years left for it. */
  const stagesOf = async ({ sittings, leader }: KeptSet): Promise<readonly JudgedStage[]> => {
    const chop = leader === undefined ? [] : [[chopTo(leader, structure)]];
    let spread = sittings.map((sitting) => sitting.map(removal));
    for (;;) {
      const stages = await judgeStages(ready, knowledge, { tree, ...(where === undefined ? {} : { where }), ...(ignore === undefined ? {} : { ignore }), from: date, daysApart: aims.daysApart, sittings: [...chop, ...spread] });
      const at = stages.slice(chop.length).findIndex((stage) => isAgainst(stage) && stage.operations.length > 1);
      if (at < 0 || spread.length >= years) return stages;
      const half = Math.ceil(spread[at]!.length / 2);
      spread = [...spread.slice(0, at), spread[at]!.slice(0, half), spread[at]!.slice(half), ...spread.slice(at + 1)];
    }
  };
  const judged = new Map<KeptSet, readonly JudgedStage[]>();
  let search = { ...base, forbidden };
  let found = keepersOf(search);
  /* The sets come best first: once one is borne, none that is left out is better. */
  for (let round = 1; ; round++) {
    for (const set of found.sets) {
      const stages = await stagesOf(set);
      const against = stages.find(isAgainst);
      if (against === undefined) judged.set(set, stages);
      else forbidden.push(against.operations.flatMap(({ branch }) => (branch === undefined ? [] : [branch])));
    }
    const part = taking[Math.floor(round / rounds)];
    if (judged.size > 0 || part === undefined) break;
    search = { ...base, limits: lessOf(limits, part), forbidden };
    found = keepersOf(search);
  }
  const shown = found.sets.filter((set) => judged.has(set));
  const [best] = shown;
  if (best === undefined) throw new SparebudError([{ code: 'impossible', path: 'tree.structure', message: 'no set of branches can be kept within what the rules bear', help: 'allow more years, or look at what is marked dead, sacrifice or keep' }]);
  if (forbidden.length > 0) notices.push(say('together'));
  if (!found.complete) notices.push(say('cut-short'));

  /* What it costs that its owner holds on to a branch. */
  for (const { id, role } of structure.branches) {
    if (role !== 'keep' || !best.keep.includes(id)) continue;
    const free = keepersOf({ ...search, locked: new Map([...locked].filter(([other]) => other !== id)) }).sets[0]!;
    const cost = fine(best.cost - free.cost);
    notices.push(cost > 0 ? say('kept-costs', { branch: id, cost: cost.toFixed(2), instead: free.remove.filter((other) => !best.remove.includes(other)).join(', ') }) : say('kept-free', { branch: id }));
  }

  const partsOf = (charges: readonly Charge[]): readonly KeepersPart[] => charges.filter(({ cost }) => fine(cost) > 0).map((charge) => ({ term: charge.term, branches: charge.branches, cost: fine(charge.cost), why: chargeText(charge, knowledge) }));
  const sets = shown.map((set): KeepersSet => ({
    keep: [...set.keep, ...aside].sort(), remove: set.remove, ...(set.leader === undefined ? {} : { leader: set.leader }),
    stages: judged.get(set)!.map(({ date: on, operations, verdict, because }) => ({
      date: on, remove: operations.flatMap(({ branch }) => (branch === undefined ? [] : [branch])), ...(operations.some(({ op }) => op === 'trunk-chop') ? { leader: set.leader! } : {}), verdict, because,
    })),
    cost: fine(set.cost), parts: partsOf(set.charges), spared: set.spared.map(({ branch, charges }) => ({ branch, parts: partsOf(charges) })),
  }));
  const listed = (ids: readonly string[]): string => (ids.length === 0 ? '–' : ids.join(', '));
  return {
    schema: 'keepers/1', ...(question.id === undefined ? {} : { id: question.id }),
    aim: style === undefined ? say('no-aim') : say('aim', { style: knowledge.wording[`style.${style}`] ?? aims.styles[style]?.label ?? style }),
    sets,
    ties: sets.slice(1).map((set, i) => ({
      set: i + 1, dearerBy: fine(set.cost - sets[0]!.cost),
      why: say('tie', { keep: listed(set.keep.filter((id) => !sets[0]!.keep.includes(id))), remove: listed(set.remove.filter((id) => !sets[0]!.remove.includes(id))) }),
    })),
    notices, ...(question.meta === undefined ? {} : { meta: question.meta }),
  };
};

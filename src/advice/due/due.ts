import type { Message, Proposal } from '../../contract/types.generated.js';
import { logEntries } from '../../facts/past/logEntries.js';
import { checkCollection, type CollectedTree } from '../../knowledge/checkCollection.js';
import { checkProposal, noSuchDay } from '../../knowledge/checkProposal.js';
import { type Issue, SparebudError } from '../../knowledge/error.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { dayOf } from '../../season/day.js';
import { message } from '../message.js';
import { stateLeft } from '../plan/treeAfter.js';
import type { Ready } from '../ready.js';
import { choresOf } from './choresOf.js';
import { type DueItem, readyForTree } from './dueItem.js';
import { followedOf } from './followedOf.js';

export type { DueItem } from './dueItem.js';

/** What is due in a collection: overdue first, then open, then soon; the oldest first. */
export interface Due {
  readonly schema: 'due/1';
  readonly date: string;
  readonly items: readonly DueItem[];
  /** What would have to be told of some trees for more to be listed. */
  readonly untold: readonly { readonly fact: string; readonly trees: readonly string[]; readonly text: Message }[];
  /** Trees that could not be answered for, and why. */
  readonly unanswered: readonly { readonly tree: string; readonly issues: readonly Issue[] }[];
}

const order: readonly DueItem['state'][] = ['overdue', 'open', 'soon'];

const before = (a: DueItem, b: DueItem): number => {
  const [one, other] = [a.since ?? a.window.from, b.since ?? b.window.from];
  return order.indexOf(a.state) - order.indexOf(b.state) || (one === other ? (a.id < b.id ? -1 : 1) : one < other ? -1 : 1);
};

/** The tree on the day that is asked about: a phase that is told is a sighting of that day, and where its standing is not told, the log tells to where it was moved last. */
const asOn = (each: CollectedTree, date: string, knowledge: Knowledge): CollectedTree => {
  const { operations } = knowledge;
  const { phase, standing, ...tree } = checkProposal({ tree: each.tree, operation: { op: 'feed' } }, knowledge).tree;
  const moves = logEntries({ tree } as Proposal).filter(({ earliest }) => earliest <= dayOf(date)).map(({ op, written }) => stateLeft(operations[op]?.leaves.standing, { ...written, op } as Proposal['operation']));
  const stands = (standing ?? moves.findLast((move) => move !== undefined)) as typeof standing;
  const seen = phase === undefined ? {} : { log: [...(tree.log ?? []), { saw: phase, date }] };
  return { ...each, tree: { ...tree, ...(stands === undefined ? {} : { standing: stands }), ...seen } as CollectedTree['tree'] };
};

/** One item for each piece of work on a tree: what follows logged work is worth more than a chore that asks for the same. */
const once = (items: readonly DueItem[]): readonly DueItem[] => {
  const kept = new Map<string, DueItem>();
  for (const item of items) {
    const key = `${item.operation.op} ${item.operation.branch ?? ''}`;
    const other = kept.get(key);
    if (other === undefined || order.indexOf(item.state) < order.indexOf(other.state)) kept.set(key, item);
  }
  return [...kept.values()];
};

/**
 * What is due in a collection on a day.
 *
 * @throws SparebudError where the collection or the date cannot be understood; a tree that cannot is told of, and the rest goes on
 */
export const dueOf = async (ready: (written: unknown) => Promise<Ready>, knowledge: Knowledge, collection: unknown, date: string, soonDays = knowledge.soonDays): Promise<Due> => {
  const wrongDate = typeof date === 'string' && /^\d{4}-\d{2}-\d{2}$/.test(date) ? noSuchDay('date', date) : [{ code: 'bad-date' as const, path: 'date', message: `\`${String(date)}\` in \`date\` has the wrong form`, found: date, help: 'write it as YYYY-MM-DD' }];
  if (wrongDate.length > 0) throw new SparebudError(wrongDate);
  const { trees, wrong } = checkCollection(collection, knowledge);
  const on = { day: dayOf(date), soonDays };
  const items: DueItem[] = [];
  const untold = new Map<string, string[]>();
  const unanswered = [...wrong].map(([tree, issues]) => ({ tree, issues }));
  for (const each of trees) {
    try {
      const tree = asOn(each, date, knowledge);
      const readyFor = readyForTree(ready, tree);
      const chores = await choresOf(tree, readyFor, knowledge, on);
      items.push(...once([...(await followedOf(tree, readyFor, knowledge, on)), ...chores.items]));
      for (const fact of tree.where === undefined ? ['place.told'] : chores.untold) untold.set(fact, [...(untold.get(fact) ?? []), each.id]);
    } catch (cause) {
      if (!(cause instanceof SparebudError)) throw cause;
      unanswered.push({ tree: each.id, issues: cause.issues });
    }
  }
  const asked = [...untold].sort(([a], [b]) => (a < b ? -1 : 1)).map(([fact, of]) => ({ fact, trees: [...of].sort(), text: message(knowledge, `untold.${fact}`) }));
  return { schema: 'due/1', date, items: items.sort(before), untold: asked, unanswered: unanswered.sort((a, b) => (a.tree < b.tree ? -1 : 1)) };
};

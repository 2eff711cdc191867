import type { Assessment, Message, Proposal } from '../../contract/types.generated.js';
import { severity } from '../../engine/verdict.js';
import { checkPlan, type PlanQuestion } from '../../knowledge/checkPlan.js';
import { SparebudError } from '../../knowledge/error.js';
import type { Knowledge, Value, Verdict } from '../../knowledge/knowledge.js';
import { dayOf, isoOf } from '../../season/day.js';
import { message } from '../message.js';
import type { Ready } from '../ready.js';
import { setText } from '../setText.js';
import { sittingsOf } from './sittings.js';
import { workLabel } from './workLabel.js';

type Operation = Proposal['operation'];
interface Item {
  readonly date: string;
  readonly operation: Operation;
}

/** Another order, spacing or way, with how far it is from what was meant. */
interface Move {
  readonly items: readonly Item[];
  readonly why: Message;
  readonly asks: number;
}

interface Tried extends Move {
  readonly verdicts: readonly Verdict[];
}

/** A JSON Merge Patch (RFC 7396) of the plan, and the verdict that asking again with it gives. */
export interface Replan {
  readonly patch: Readonly<Record<string, unknown>>;
  readonly why: Message;
  readonly verdict: Verdict;
}

/** How much later the rest of a plan may be put. */
const laterDays = [30, 60, 90, 180, 365];

/** How often the worst that is left is mended in turn. */
const rounds = 8;

/** How many operations are judged anew at most, so that a long plan is answered in seconds. */
const mostJudged = 1500;

const most = 3;

const planWith = (question: PlanQuestion, items: readonly Item[], knowledge: Knowledge): PlanQuestion => {
  const days = new Map<string, readonly Operation[]>();
  for (const { date, operation } of items) days.set(date, [...(days.get(date) ?? []), operation]);
  return checkPlan({ ...question, steps: [...days].map(([date, operations]) => ({ date, operations })) }, knowledge);
};

const worstOf = (verdicts: readonly Verdict[]): number => Math.max(...verdicts.map(severity));
const count = (verdicts: readonly Verdict[], verdict: Verdict): number => verdicts.filter((each) => each === verdict).length;

/** Fewer that are advised against, then fewer risky, then the smaller change. */
const before = (a: Tried, b: Tried): number =>
  count(a.verdicts, 'advise-against') - count(b.verdicts, 'advise-against') || count(a.verdicts, 'risky') - count(b.verdicts, 'risky') || a.asks - b.asks || (JSON.stringify(a.items) < JSON.stringify(b.items) ? -1 : 1);

/**
 * The nearest order, spacing or way of a plan that would be judged better.
 *
 * The worst operation is moved to a better day of its own, on its own or with its whole sitting, or put later with all that follows, or its sitting changes places with the
 * one before or after, or it is done with less; then the next worst, until nothing gets better. Each is judged anew as a whole plan.
 */
export const replansOf = async (ready: (written: unknown) => Promise<Ready>, assess: (written: unknown) => Promise<Assessment>, knowledge: Knowledge, question: PlanQuestion): Promise<readonly Replan[]> => {
  const proposalsOf = (plan: PlanQuestion): readonly Proposal[] => sittingsOf(plan, knowledge).sittings.flatMap(({ proposals }) => proposals);
  const itemsOf = (plan: PlanQuestion): readonly Item[] => plan.steps.flatMap(({ date, operations }) => operations.map((operation) => ({ date, operation })));
  /* What stands before a step that is moved is judged already. */
  const kept = new Map<string, Verdict>();
  const verdictOf = async (proposal: Proposal): Promise<Verdict> => {
    const key = JSON.stringify(proposal);
    const verdict = kept.get(key) ?? (await (await ready(proposal)).judge()).verdict;
    kept.set(key, verdict);
    return verdict;
  };
  const judged = async (plan: PlanQuestion): Promise<readonly Verdict[]> => {
    const verdicts: Verdict[] = [];
    for (const proposal of proposalsOf(plan)) verdicts.push(await verdictOf(proposal));
    return verdicts;
  };
  const label = (operation: Operation): string => workLabel(operation, knowledge);

  /** Other ways for the item at `at`. */
  const movesOf = async (plan: PlanQuestion, at: number): Promise<readonly Move[]> => {
    const items = itemsOf(plan);
    const item = items[at]!;
    const { windows, changes } = await assess(proposalsOf(plan)[at]!);
    const moves: Move[] = [];
    const days = (to: string): number => Math.abs(dayOf(to) - dayOf(item.date));
    const put = (which: (each: Item, i: number) => boolean, to: (each: Item) => string, why: Message, asks: number): void => {
      moves.push({ items: items.map((each, i) => (which(each, i) ? { ...each, date: to(each) } : each)), why, asks });
    };
    const moved = (to: string): Message => message(knowledge, 'plan.moved', { operation: label(item.operation), date: to, was: item.date });
    for (const { from } of windows) {
      put((_, i) => i === at, () => from, moved(from), days(from) / 30);
      const sitting = items.filter(({ date }) => date === item.date);
      if (sitting.length > 1) put(({ date }) => date === item.date, () => from, message(knowledge, 'plan.moved', { operation: sitting.map(({ operation }) => label(operation)).join(', '), date: from, was: item.date }), (sitting.length * days(from)) / 30);
    }
    const rest = items.filter(({ date }) => date >= item.date).length;
    for (const later of laterDays) put(({ date }) => date >= item.date, ({ date }) => isoOf(dayOf(date) + later), message(knowledge, 'plan.later', { date: item.date, days: later }), (rest * later) / 30);
    const dates = [...new Set(items.map(({ date }) => date))];
    for (const other of [dates[dates.indexOf(item.date) - 1], dates[dates.indexOf(item.date) + 1]]) {
      if (other !== undefined) put(({ date }) => date === other || date === item.date, ({ date }) => (date === other ? item.date : other), moved(other), (2 * days(other)) / 30);
    }
    for (const { patch } of changes) {
      const set = patch['operation'] as Readonly<Record<string, Value>> | undefined;
      if (set === undefined) continue;
      moves.push({ items: items.map((each, i) => (i === at ? { ...each, operation: { ...each.operation, ...set } as Operation } : each)), why: message(knowledge, 'plan.otherwise', { operation: label(item.operation), date: item.date, with: setText(set, knowledge) }), asks: Object.keys(set).length });
    }
    return moves;
  };

  const tried = async (move: Move): Promise<Tried | undefined> => {
    try {
      return { ...move, verdicts: await judged(planWith(question, move.items, knowledge)) };
    } catch (cause) {
      if (cause instanceof SparebudError) return undefined;
      throw cause;
    }
  };

  const start: Tried = { items: itemsOf(question), why: message(knowledge, 'plan.allowed'), asks: 0, verdicts: await judged(question) };
  const found: Tried[] = [];
  let now = start;
  for (let round = 0; round < rounds && worstOf(now.verdicts) > 0; round++) {
    const plan = planWith(question, now.items, knowledge);
    const at = now.verdicts.findIndex((verdict) => severity(verdict) === worstOf(now.verdicts));
    const better: Tried[] = [];
    for (const move of await movesOf(plan, at)) {
      if (kept.size >= mostJudged) break;
      const next = await tried(now === start ? move : { ...move, why: message(knowledge, 'plan.and', { one: now.why.text, other: move.why.text }), asks: now.asks + move.asks });
      if (next !== undefined && before({ ...next, asks: 0 }, { ...now, asks: 0, items: next.items }) < 0) better.push(next);
    }
    if (better.length === 0) break;
    better.sort(before);
    found.push(...better.filter((each) => worstOf(each.verdicts) < worstOf(start.verdicts)));
    now = better[0]!;
  }
  const shown = new Map<string, Tried>();
  for (const each of found.sort((a, b) => worstOf(a.verdicts) - worstOf(b.verdicts) || before(a, b))) {
    const key = JSON.stringify(planWith(question, each.items, knowledge).steps);
    if (!shown.has(key)) shown.set(key, each);
  }
  return [...shown.entries()].slice(0, most).map(([steps, { why, verdicts }]) => ({ patch: { steps: JSON.parse(steps) as unknown }, why, verdict: (['allowed', 'risky', 'advise-against'] as const)[worstOf(verdicts)]! }));
};

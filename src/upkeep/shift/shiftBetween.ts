import { type Ready, readyFor } from '../../advice/ready.js';
import { evaluate } from '../../engine/evaluate.js';
import { residualsOf } from '../../engine/residuals.js';
import { deriveFacts } from '../../facts/deriveFacts.js';
import { SparebudError } from '../../knowledge/error.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import type { Station } from '../../season/station.js';
import type { Proposal } from '../corpus.js';
import { type Answer, answerOf, differing } from './answer.js';
import { changedRuleIds, changedSpeciesIds, pairsOf } from './pairsOf.js';
import { watchedGrowing } from './watchedGrowing.js';

/** An answer that changes, and the rules that fire otherwise. */
export interface Shifted {
  readonly proposal: Proposal;
  readonly species: string;
  readonly operation: string;
  readonly before: Answer;
  readonly after: Answer;
  readonly rules: readonly string[];
}

/** What changes between two states of the knowledge, over so many proposals. */
export interface Shift {
  readonly proposals: number;
  /** Answers whose verdict, or whose range, is another. */
  readonly shifted: readonly Shifted[];
  /** Answers that stay and rest on other rules, by rule. */
  readonly otherReasons: Readonly<Record<string, number>>;
  readonly rules: readonly string[];
  readonly species: readonly string[];
  /** Proposals that only one of the two states understands, by species. */
  readonly newly: Readonly<Record<string, number>>;
  readonly noLonger: Readonly<Record<string, number>>;
}

type State = (proposal: unknown) => Promise<Ready>;

const whole = async (state: State, proposal: Proposal): Promise<Answer | undefined> => {
  try {
    return answerOf((await (await state(proposal)).judge()).fired);
  } catch (cause) {
    if (cause instanceof SparebudError) return undefined;
    throw cause;
  }
};

/** Asks what could differ of both states, and keeps what does. */
export const shiftBetween = async (before: Knowledge, after: Knowledge, stations: readonly Station[], proposals: readonly Proposal[]): Promise<Shift> => {
  const [was, is] = [readyFor(before, stations), readyFor(after, stations)];
  const residualsBefore = residualsOf(before);
  const watched = watchedGrowing(before.growing, after.growing);
  const withFactors: Knowledge = { ...after, growing: watched.growing };
  const pairs = pairsOf(before, after);
  const shifted: Shifted[] = [];
  const otherReasons: Record<string, number> = {};
  const [newly, noLonger]: readonly Record<string, number>[] = [{}, {}] as const;
  const count = (into: Record<string, number>, id: string): number => (into[id] = (into[id] ?? 0) + 1);

  const both = async (proposal: Proposal, operation: string, species: string): Promise<readonly [Answer | undefined, Answer | undefined] | undefined> => {
    const tree = proposal['tree'] as Proposal;
    const found = tree['traits'] === undefined && tree['rootstock'] === undefined && after.species[species] !== undefined ? await pairs(operation, species) : 'whole';
    if (found === 'same') return undefined;
    if (found === 'whole') return [await whole(was, proposal), await whole(is, proposal)];
    const { prepared: { asked, variant }, residuals } = await is(proposal);
    const { read } = deriveFacts(asked);
    if (found === 'factors') {
      const [left, looked] = await watched.during(async () => await evaluate(residuals.rules, deriveFacts({ ...asked, knowledge: withFactors }).read));
      return looked ? [answerOf(left), answerOf(await evaluate(residuals.rules, read))] : undefined;
    }
    if (found === 'facts') {
      const { rules } = await residualsBefore(operation, variant, asked.traits);
      const elsewise = deriveFacts({ ...asked, knowledge: before, operation: before.operations[operation]! });
      return [answerOf(await evaluate(rules, elsewise.read)), answerOf(await evaluate(residuals.rules, read))];
    }
    const [left, right] = [await evaluate(found.before, read), await evaluate(found.after, read)];
    if (differing(answerOf(left), answerOf(right)).length === 0) return undefined;
    const others = await evaluate(residuals.rules.filter(({ rule }) => !found.changed.has(rule.id)), read);
    return [answerOf([...others, ...left]), answerOf([...others, ...right])];
  };

  for (const proposal of proposals) {
    const { op: operation } = proposal['operation'] as { readonly op: string };
    const { species } = proposal['tree'] as { readonly species: string };
    const [left, right] = (await both(proposal, operation, species)) ?? [];
    if (left === undefined || right === undefined) {
      if (right !== undefined) count(newly!, species);
      if (left !== undefined) count(noLonger!, species);
      continue;
    }
    const rules = differing(left, right);
    if (left.verdict !== right.verdict || left.range.join() !== right.range.join()) shifted.push({ proposal, species, operation, before: left, after: right, rules });
    else for (const rule of rules) count(otherReasons, rule);
  }
  return { proposals: proposals.length, shifted, otherReasons, rules: changedRuleIds(before, after), species: changedSpeciesIds(before, after).filter((id) => after.species[id]!.rank !== 'member'), newly: newly!, noLonger: noLonger! };
};

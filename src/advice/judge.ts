import type { Proposal } from '../contract/types.generated.js';
import { evaluate, type Fired } from '../engine/evaluate.js';
import type { Residual } from '../engine/specialise.js';
import { type Judgement, judgementOf } from '../engine/verdict.js';
import { type DerivedFacts, deriveFacts } from '../facts/deriveFacts.js';
import type { Rule, Value } from '../knowledge/knowledge.js';
import type { Day } from '../season/day.js';
import type { Prepared } from './prepare.js';
import { lookedAt, reaching } from './relevant.js';

/** A proposal judged: its facts, the rules that fired and the verdict they come to. */
export interface Judged extends Judgement {
  readonly facts: DerivedFacts;
  readonly fired: readonly Fired<Rule>[];
}

/** Judges a prepared proposal: with facts that are tried out in the place of those it has, or on another day. */
export interface Judge {
  (tried?: ReadonlyMap<string, Value>): Promise<Judged>;
  readonly on: (day: Day) => Promise<Judged>;
}

/** What changes from day to day, and what does not. */
interface Split {
  readonly daily: ReadonlySet<string>;
  readonly facts: DerivedFacts;
  readonly moving: readonly Residual<Rule>[];
  readonly still: readonly Fired<Rule>[];
}

/** Facts that a date alone can change; whatever is worked out of them changes with it. */
const dated = (id: string): boolean => id.startsWith('season.') || id.startsWith('history.') || id === 'disease.inSeason';

export const judgeOf = (prepared: Prepared, rules: readonly Residual<Rule>[], ignore: Proposal['ignore']): Judge => {
  const asked = ignore === undefined ? rules : rules.filter((residual) => !ignore.includes(residual.rule.id));
  const judged = (fired: readonly Fired<Rule>[], facts: DerivedFacts): Judged => ({ ...judgementOf(fired), facts, fired });
  const today = async (tried?: ReadonlyMap<string, Value>): Promise<Judged> => {
    const facts = deriveFacts(tried === undefined ? prepared.asked : { ...prepared.asked, tried });
    return judged(await evaluate(asked, facts.read), facts);
  };

  /* What no date can change is judged once for all days. */
  let split: Promise<Split> | undefined;
  const splitRules = async (): Promise<Split> => {
    const facts = deriveFacts(prepared.asked);
    const daily = new Set<string>();
    for (const id of lookedAt(asked)) {
      const reached = reaching([id], facts);
      for (const each of reached) if ([...reaching([each], facts)].some(dated)) daily.add(each);
    }
    const moves = (residual: Residual<Rule>): boolean => residual.table?.buckets.some((buckets) => daily.has(buckets.fact)) === true;
    return { daily, facts, moving: asked.filter(moves), still: await evaluate(asked.filter((residual) => !moves(residual)), facts.read) };
  };
  const on = async (day: Day): Promise<Judged> => {
    split ??= splitRules();
    const { daily, facts: still, moving, still: fired } = await split;
    const facts = deriveFacts(prepared.on(day), { facts: still, daily });
    return judged([...fired, ...(await evaluate(moving, facts.read))], facts);
  };
  return Object.assign(today, { on });
};

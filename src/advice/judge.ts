import type { Proposal } from '../contract/types.generated.js';
import { evaluate, type Fired } from '../engine/evaluate.js';
import type { Residual } from '../engine/specialise.js';
import { type Judgement, judgementOf } from '../engine/verdict.js';
import { type DerivedFacts, deriveFacts } from '../facts/deriveFacts.js';
import type { Rule, Value } from '../knowledge/knowledge.js';
import type { Day } from '../season/day.js';
import type { Prepared } from './prepare.js';

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

export const judgeOf = (prepared: Prepared, rules: readonly Residual<Rule>[], ignore: Proposal['ignore']): Judge => {
  const asked = ignore === undefined ? rules : rules.filter((residual) => !ignore.includes(residual.rule.id));
  const judge = async (facts: DerivedFacts): Promise<Judged> => {
    const fired = await evaluate(asked, facts.read);
    return { ...judgementOf(fired), facts, fired };
  };
  const today = async (tried?: ReadonlyMap<string, Value>): Promise<Judged> => await judge(deriveFacts(tried === undefined ? prepared.asked : { ...prepared.asked, tried }));
  return Object.assign(today, { on: async (day: Day) => await judge(deriveFacts(prepared.on(day))) });
};

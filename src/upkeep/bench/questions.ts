import { readyFor } from '../../advice/ready.js';
import { type Buckets, bucketsOf } from '../../engine/buckets.js';
import { type Limit, testsOf } from '../../engine/condition.js';
import { limitFact } from '../../engine/engineRules.js';
import { ruleCondition } from '../../engine/ruleCondition.js';
import { limitsOf } from '../../engine/specialise.js';
import { deriveFacts } from '../../facts/deriveFacts.js';
import type { FactValue } from '../../facts/factValue.js';
import type { Knowledge, Value } from '../../knowledge/knowledge.js';
import type { Station } from '../../season/station.js';
import type { Facts, MayBe, Rules } from './contender.js';

/** Rules and the facts that they are asked with. */
export interface Question {
  readonly rules: Rules;
  readonly facts: Facts;
}

/** What is the same for all questions with the same rules: traits and limits as facts, and the classes that the rules tell apart. */
interface Settled {
  readonly rules: Rules;
  readonly whole: MayBe;
  readonly cuts: ReadonlyMap<string, Buckets>;
}

const settledOf = (rules: Rules, limits: readonly Limit[]): Settled => {
  const { knowledge, operation, traits, residuals } = rules;
  const whole: Record<string, readonly Value[]> = {};
  for (const [id, { is, either }] of Object.entries(traits)) whole[`species.${id}`] = either ?? [is as Value];
  const days = knowledge.operations[operation]?.daysNeeded?.days;
  for (const limit of limits) {
    const figures = limitsOf(limit, traits, days);
    if (figures.length > 0) whole[limitFact(limit)!] = figures;
  }
  const tests = residuals.flatMap(({ left }) => testsOf(left));
  const cuts = new Map([...new Set(tests.map(({ fact }) => fact))].map((id) => [id, bucketsOf(id, knowledge.facts[id], tests.filter(({ fact }) => fact === id))]));
  return { rules, whole, cuts };
};

/** A value for each class that a fact may fall into. */
const amongOf = ({ among, stands }: Buckets, fact: FactValue): readonly Value[] => {
  const classes = among(fact);
  return stands.filter((_, bucket) => (classes & (1 << bucket)) !== 0);
};

/** Makes the question of a proposal, with every fact of the knowledge worked out beforehand: what is timed is the rules alone. */
export const questionsFor = (knowledge: Knowledge, stations: readonly Station[]): ((proposal: unknown) => Promise<Question>) => {
  const ready = readyFor(knowledge, stations);
  const written = Object.values(knowledge.rules).flatMap((rule) => testsOf(ruleCondition(rule))).map(({ limit }) => limit);
  const limits = [...new Map(written.flatMap((limit) => (limitFact(limit) === undefined ? [] : [[limitFact(limit), limit] as const]))).values()];
  const kept = new Map<unknown, Settled>();
  return async (proposal) => {
    const { prepared, residuals } = await ready(proposal);
    const { traits, operation } = prepared.asked;
    const settled = kept.get(residuals) ?? settledOf({ knowledge, operation: operation.id, traits, residuals: residuals.rules }, limits);
    kept.set(residuals, settled);
    const { read } = deriveFacts(prepared.asked);
    const facts = new Map<string, FactValue>();
    const mayBe: Record<string, readonly Value[]> = {};
    const whole: Record<string, readonly Value[]> = { ...settled.whole };
    for (const id of Object.keys(knowledge.facts)) {
      const fact = read(id);
      const cut = settled.cuts.get(id);
      if (cut !== undefined) {
        facts.set(id, fact);
        mayBe[id] = fact.value === undefined ? amongOf(cut, fact) : [fact.value];
      }
      if (!id.startsWith('species.') && (fact.value !== undefined || cut !== undefined)) whole[id] = mayBe[id] ?? [fact.value!];
    }
    return { rules: settled.rules, facts: { read: (id) => facts.get(id)!, mayBe, whole } };
  };
};

import type { Rule, Trait, Value, WrittenCondition } from '../../src/knowledge/knowledge.js';
import type { Knowledge } from '../../src/knowledge/knowledge.js';

/** A second opinion on rules, straight from their YAML and without any of the engine's code: three-valued logic over what facts may be. */
export type Truth = 'true' | 'false' | 'unknown';

/** What a fact may be: one of some values, or any number within bounds. */
export type MayBe = { readonly values: readonly Value[] } | { readonly least: number; readonly most: number; readonly whole: boolean } | 'anything';

export interface Setting {
  readonly knowledge: Knowledge;
  readonly operation: string;
  readonly traits: Readonly<Record<string, Trait>>;
  readonly mayBe: (fact: string) => MayBe;
}

const and = (truths: readonly Truth[]): Truth => (truths.includes('false') ? 'false' : truths.includes('unknown') ? 'unknown' : 'true');
const or = (truths: readonly Truth[]): Truth => (truths.includes('true') ? 'true' : truths.includes('unknown') ? 'unknown' : 'false');
const not = (truth: Truth): Truth => (truth === 'true' ? 'false' : truth === 'false' ? 'true' : 'unknown');

const holds = (key: string, value: Value, limit: Value): boolean => {
  switch (key) {
    case 'above': return (value as number) > (limit as number);
    case 'below': return (value as number) < (limit as number);
    case 'atLeast': return (value as number) >= (limit as number);
    case 'atMost': return (value as number) <= (limit as number);
    case 'is': return value === limit;
    case 'in': return (limit as readonly string[]).includes(value as string);
    case 'has': return (value as readonly string[]).includes(limit as string);
    default: throw new Error(`the naive evaluator does not know \`${key}\``);
  }
};

/** Whether a test holds for all, some or none of the values that a fact may have, and of the limits where sources disagree on them. */
const over = (key: string, fact: MayBe, limits: readonly Value[]): Truth => {
  if (fact === 'anything') return 'unknown';
  if ('values' in fact) {
    const results = fact.values.flatMap((value) => limits.map((limit) => holds(key, value, limit)));
    return results.every((result) => result) ? 'true' : results.some((result) => result) ? 'unknown' : 'false';
  }
  return limits.length === 0 ? 'false' : limits.map((limit): Truth => {
    const { least, most, whole } = fact;
    const ends = [least, most].map((end) => holds(key, end, limit));
    const inside = key === 'is' && (limit as number) >= least && (limit as number) <= most && (!whole || Number.isInteger(limit));
    if (key === 'is') return least === most && least === limit ? 'true' : inside ? 'unknown' : 'false';
    return ends[0] === ends[1] ? (ends[0] ? 'true' : 'false') : 'unknown';
  }).reduce((a, b) => (a === b ? a : 'unknown'));
};

const valuesOf = (trait: Trait | undefined): readonly Value[] => (trait === undefined ? [] : (trait.either ?? [trait.is as Value]));

const rounded = (value: number): number => Math.round(value * 1e9) / 1e9;

/** The limits that an operand comes to; none where the trait or figure is missing. */
const limitsOf = (operand: unknown, setting: Setting): readonly Value[] => {
  if (typeof operand !== 'object' || operand === null || Array.isArray(operand)) return [operand as Value];
  const { trait, operation, times = 1, plus = 0 } = operand as { trait?: string; operation?: string; times?: number; plus?: number };
  if (trait !== undefined) return valuesOf(setting.traits[trait]).map((value) => (typeof value === 'number' ? rounded(value * times + plus) : value));
  if (operation !== undefined) {
    const days = setting.knowledge.operations[setting.operation]?.daysNeeded?.days;
    return days === undefined ? [] : [rounded(days * times + plus)];
  }
  throw new Error('an operand without trait or operation');
};

/** A condition on one fact. `lenient`: what is not known counts as not holding. */
const tested = (fact: string, written: unknown, setting: Setting, lenient: boolean): Truth => {
  const mayBe: MayBe = fact.startsWith('species.') ? { values: valuesOf(setting.traits[fact.slice('species.'.length)]) } : setting.mayBe(fact);
  /* shared/facts.yaml: a condition on a missing trait does not hold. */
  if (mayBe !== 'anything' && 'values' in mayBe && mayBe.values.length === 0) return 'false';
  const one = (key: string, operand: unknown, denied: boolean): Truth => {
    const limits = key === 'is' || (key === 'in' && Array.isArray(operand)) ? [operand as Value] : limitsOf(operand, setting);
    if (limits.length === 0) return 'false';
    const truth = over(key, mayBe, limits);
    const final = denied ? not(truth) : truth;
    return lenient && final === 'unknown' ? 'false' : final;
  };
  const read = (operand: unknown, denied: boolean): Truth => {
    if (Array.isArray(operand)) return one('in', operand, denied);
    if (typeof operand !== 'object' || operand === null) return one('is', operand, denied);
    const parts = Object.entries(operand).map(([key, inner]): Truth => {
      if (key === 'not') return read(inner, !denied);
      if (key === 'between') {
        const [least, most] = inner as readonly [number, number];
        const both = [one('atLeast', least, denied), one('atMost', most, denied)];
        return denied ? or(both) : and(both);
      }
      return one(key, inner, denied);
    });
    return denied ? or(parts) : and(parts);
  };
  return read(written, false);
};

const evaluated = (written: WrittenCondition, setting: Setting, lenient: (fact: string) => boolean): Truth => {
  const [key, operand] = Object.entries(written)[0]!;
  if (key === 'all' || key === 'any') return (key === 'all' ? and : or)((operand as readonly WrittenCondition[]).map((part) => evaluated(part, setting, lenient)));
  return tested(key, operand, setting, lenient(key));
};

const factsIn = (written: readonly WrittenCondition[]): readonly string[] =>
  written.flatMap((condition) => Object.entries(condition).flatMap(([key, operand]) => (key === 'all' || key === 'any' ? factsIn(operand as readonly WrittenCondition[]) : [key])));

/** Whether a rule fires: its `when` certainly holds and each `unless` certainly does not; a fact that stands only in `unless` is taken not to lift it while it is not known. */
export const naivelyFires = (rule: Pick<Rule, 'when' | 'unless'>, setting: Setting): 'certainly' | 'possibly' | 'never' => {
  const needed = new Set(factsIn(rule.when));
  const when = and(rule.when.map((condition) => evaluated(condition, setting, () => false)));
  const lifted = rule.unless.map((reason) => and(reason.when.map((condition) => evaluated(condition, setting, (fact) => !needed.has(fact)))));
  const fires = and([when, ...lifted.map(not)]);
  return fires === 'true' ? 'certainly' : fires === 'unknown' ? 'possibly' : 'never';
};

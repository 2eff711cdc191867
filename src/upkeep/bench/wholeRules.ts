import { Engine, Fact, type NestedCondition, type RuleProperties } from 'json-rules-engine';
import { type Condition, type Test, testsOf } from '../../engine/condition.js';
import { limitFact } from '../../engine/engineRules.js';
import { ruleCondition } from '../../engine/ruleCondition.js';
import type { Rule, Value } from '../../knowledge/knowledge.js';
import type { FiredOn, MayBe } from './contender.js';

type Mode = 'certainly' | 'possibly';
type Values = readonly Value[] | undefined;
type Next = (value: Value, limit: Value) => boolean;

/** A condition as the engine gives it back. */
interface Judged {
  readonly fact?: string;
  readonly factResult?: Values;
  readonly result?: boolean;
  readonly all?: readonly Judged[];
  readonly any?: readonly Judged[];
}

const compiled = (condition: Condition, mode: Mode): NestedCondition => {
  switch (condition.kind) {
    case 'test': {
      const limit = limitFact(condition.limit);
      const decorator = mode === 'possibly' ? 'possibly' : condition.lenient === true ? 'leniently' : 'certainly';
      const value = limit === undefined ? [(condition.limit as { readonly is: Value }).is] : { fact: limit };
      return { fact: condition.fact, operator: `${condition.denied === true ? 'orMissing:' : ''}${decorator}:${condition.operator}`, value };
    }
    case 'all':
      return { all: condition.of.map((part) => compiled(part, mode)) };
    case 'any':
      return { any: condition.of.map((part) => compiled(part, mode)) };
    case 'not':
    case 'constant':
      throw new Error(`a condition must be in normal form, found ${condition.kind}`);
  }
};

/** What a rule that fired stands on, read from its conditions as the engine gives them back. */
const groundsIn = (judged: Judged): readonly string[] => {
  if (judged.all !== undefined) return judged.all.flatMap(groundsIn);
  if (judged.any === undefined) return [judged.fact!];
  const settled = ({ fact, factResult, result }: Judged): boolean => result === true && fact?.startsWith('species.') === true && factResult?.length === 1;
  const first = judged.any.find(settled) ?? judged.any.find(({ result }) => result === true);
  return first === undefined ? [] : groundsIn(first);
};

const newEngine = (rules: readonly RuleProperties[]): Engine => {
  const engine = new Engine([...rules], { allowUndefinedFacts: true });
  engine.addOperatorDecorator('certainly', (values: Values, limits: Values, next: Next) => values !== undefined && limits !== undefined && limits.every((limit) => values.every((value) => next(value, limit))));
  engine.addOperatorDecorator('leniently', (values: Values, limits: Values, next: Next) => values !== undefined && limits !== undefined && limits.every((limit) => values.some((value) => next(value, limit))));
  engine.addOperatorDecorator('possibly', (values: Values, limits: Values, next: Next) => values !== undefined && limits !== undefined && limits.some((limit) => values.some((value) => next(value, limit))));
  engine.addOperatorDecorator('orMissing', (values: Values, limits: Values, next: (values: Values, limits: Values) => boolean) => values === undefined || limits === undefined || next(values, limits));
  return engine;
};

/** The ids of the facts that some tests ask for. */
const askedFor = (tests: readonly Test[]): readonly string[] => [...new Set(tests.flatMap((test) => [test.fact, limitFact(test.limit) ?? test.fact]))];

/**
 * json-rules-engine over whole rules, traits being facts like any other: each rule twice, so that what is not known is told apart from what does not fit.
 * Facts are given without that engine's cache, which makes it faster. `also` is a further condition of each rule.
 */
export const wholeRules = (rules: readonly Rule[], also: (rule: Rule) => readonly NestedCondition[]): ((facts: MayBe) => Promise<readonly FiredOn[]>) => {
  const conditions = rules.map((rule) => ({ rule, condition: ruleCondition(rule) }));
  const needed = askedFor(conditions.flatMap(({ condition }) => testsOf(condition)));
  const engine = newEngine(conditions.flatMap(({ rule, condition }) => (['certainly', 'possibly'] as const).map((mode) => ({ name: `${mode} ${rule.id}`, conditions: { all: [compiled(condition, mode), ...also(rule)] }, event: { type: 'holds' } }))));
  return async (whole) => {
    const facts: Record<string, Fact> = {};
    for (const id of needed) if (whole[id] !== undefined) facts[id] = new Fact(id, whole[id], { cache: false });
    if (whole['operation'] !== undefined) facts['operation'] = new Fact('operation', whole['operation'][0]!, { cache: false });
    const { results } = await engine.run(facts);
    const fired = new Map<string, FiredOn>();
    for (const { name, conditions } of results) {
      const [fires, rule] = name.split(' ') as [Mode, string];
      if (fires === 'possibly' && fired.has(rule)) continue;
      const [whole] = (conditions as { readonly all: readonly Judged[] }).all;
      fired.set(rule, { rule, fires, facts: groundsIn(whole!.all![0]!) });
    }
    return [...fired.values()];
  };
};

import type { Knowledge, Trait, Value } from '../knowledge/knowledge.js';
import { type Answer, type Asked, askEngine } from './askEngine.js';
import { type Table, tableOf } from './cells.js';
import { type Condition, type Constant, type Limit, type Test, testsOf } from './condition.js';
import { type Conditional, ruleCondition } from './ruleCondition.js';

export type Traits = Readonly<Record<string, Trait>>;

/** A rule (or whatever else has conditions) once species and operation are known: what is left to ask of it, if anything. */
export interface Residual<Whole extends Conditional = Conditional> {
  readonly rule: Whole;
  /** The whole condition, each test on a trait turned into what it comes to. */
  readonly folded: Condition;
  /** What is left of it, in its own tests. */
  readonly left: Condition;
  /** Absent where the rule holds whatever else is the case. */
  readonly table?: Table;
  /** Traits on which sources disagree and that this rule still turns on. */
  readonly disputed: readonly string[];
}

const valuesOf = (trait: Trait | undefined): readonly Value[] => (trait === undefined ? [] : (trait.either ?? [trait.is as Value]));

/** What a limit comes to for a species: several figures where sources disagree, none where the trait or figure is missing. */
export const limitsOf = (limit: Limit, traits: Traits, daysNeeded: number | undefined): readonly Value[] => {
  if ('is' in limit) return [limit.is];
  const figures = 'trait' in limit ? valuesOf(traits[limit.trait]) : daysNeeded === undefined ? [] : [daysNeeded];
  return figures.map((figure) => (typeof figure === 'number' ? Math.round((figure * limit.times + limit.plus) * 1e9) / 1e9 : figure));
};

/** The condition that is left once its constants are taken out; a constant where nothing is left. */
const simplify = (condition: Condition): Condition => {
  if (condition.kind !== 'all' && condition.kind !== 'any') return condition;
  const decides = condition.kind === 'any';
  const parts: Condition[] = [];
  for (const part of condition.of) {
    const simple = simplify(part);
    if (simple.kind === 'constant') {
      if (simple.holds === decides) return { kind: 'constant', holds: decides };
    } else parts.push(simple);
  }
  if (parts.length === 0) return { kind: 'constant', holds: !decides };
  return parts.length === 1 ? parts[0]! : { kind: condition.kind, of: parts.slice() };
};

/** What the engine said of a test on a trait; until it has, the promise of it. */
interface Fold {
  answer?: Answer;
  readonly asked: Promise<void>;
}

/** Tests on traits that are asked of the engine together, once all rules at hand were looked at. */
interface FoldRun {
  readonly tests: Asked[];
  readonly folds: Fold[];
  readonly asked: Promise<void>;
}

/** A rule's condition, what of a species and operation it turns on, and what is left of it by these. */
interface Turning {
  readonly whole: Condition;
  readonly tests: readonly Test[];
  readonly traits: readonly string[];
  readonly ofOperation: boolean;
  readonly residuals: Map<string, Promise<Residual | undefined>>;
}

/** Remembers the condition of each rule, and what the engine said of a trait, so that each is asked once for all species that share it. */
export interface Folds {
  readonly rules: WeakMap<Conditional, Turning>;
  readonly asked: Map<string, Fold>;
  readonly tables: Map<string, Table>;
  next?: FoldRun | undefined;
}

export const newFolds = (): Folds => ({ rules: new WeakMap(), asked: new Map(), tables: new Map() });

const newRun = (folds: Folds): FoldRun => {
  const ask = async (): Promise<void> => {
    await Promise.resolve();
    folds.next = undefined;
    const answers = await askEngine(run.tests);
    run.folds.forEach((fold, i) => { fold.answer = answers[i]!; });
  };
  const run: FoldRun = { tests: [], folds: [], asked: ask() };
  return run;
};

const ask = (folds: Folds, condition: Test, values: readonly Value[]): Fold => {
  folds.next ??= newRun(folds);
  const fold: Fold = { asked: folds.next.asked };
  folds.next.tests.push({ condition, possible: new Map([[condition.fact, values]]) });
  folds.next.folds.push(fold);
  return fold;
};

const turnsOn = (folds: Folds, rule: Conditional): Turning => {
  let kept = folds.rules.get(rule);
  if (kept === undefined) {
    const whole = ruleCondition(rule);
    const tests = testsOf(whole);
    const traits = tests.flatMap(({ fact, limit }) => [...(fact.startsWith('species.') ? [fact.slice('species.'.length)] : []), ...('trait' in limit ? [limit.trait] : [])]);
    kept = { whole, tests, traits: [...new Set(traits)], ofOperation: tests.some(({ limit }) => 'operation' in limit), residuals: new Map() };
    folds.rules.set(rule, kept);
  }
  return kept;
};

const made = async <Whole extends Conditional>(rule: Whole, { whole, tests }: Turning, daysNeeded: number | undefined, traits: Traits, knowledge: Knowledge, folds: Folds): Promise<Residual<Whole> | undefined> => {
  /* First all that is not known yet is asked at once; then nothing is left to wait for. */
  const foldOf = new Map<Test, Fold>();
  const limitsOfTest = new Map<Test, readonly Value[]>();
  for (const test of tests) {
    const limits = limitsOf(test.limit, traits, daysNeeded);
    limitsOfTest.set(test, limits);
    if (limits.length === 0 || !test.fact.startsWith('species.')) continue;
    const values = valuesOf(traits[test.fact.slice('species.'.length)]);
    if (values.length === 0) continue;
    const { kind, fact, operator, limit } = test;
    const key = JSON.stringify([fact, operator, limits, values]);
    const fold = folds.asked.get(key) ?? ask(folds, { kind, fact, operator, limit, limits }, values);
    folds.asked.set(key, fold);
    foldOf.set(test, fold);
  }
  const open = [...foldOf.values()].filter(({ answer }) => answer === undefined);
  if (open.length > 0) await Promise.all(open.map(({ asked }) => asked));

  const disputed = new Set<string>();
  const foldTest = (test: Test): Condition => {
    const limits = limitsOfTest.get(test)!;
    /* A condition on a trait that the species lacks does not hold; so what denies it does. */
    const missing: Constant = { kind: 'constant', holds: test.denied === true, test };
    if (limits.length === 0) return missing;
    const resolved: Test = { ...test, limits };
    if ('trait' in test.limit && limits.length > 1) disputed.add(`species.${test.limit.trait}`);
    if (!test.fact.startsWith('species.')) return resolved;
    const answer = foldOf.get(test)?.answer;
    if (answer === undefined) return missing;
    if (answer.certainly === answer.possibly) return { kind: 'constant', holds: answer.certainly, test: resolved };
    disputed.add(test.fact);
    return resolved;
  };
  const fold = (condition: Condition): Condition => {
    switch (condition.kind) {
      case 'test':
        return foldTest(condition);
      case 'all':
      case 'any':
        return { kind: condition.kind, of: condition.of.map(fold) };
      case 'not':
      case 'constant':
        return condition;
    }
  };

  const folded = fold(whole);
  const left = simplify(folded);
  if (left.kind === 'constant') return left.holds ? { rule, folded, left, disputed: [] } : undefined;
  const key = JSON.stringify(left);
  let table = folds.tables.get(key);
  if (table === undefined) {
    table = tableOf(left, knowledge.facts);
    folds.tables.set(key, table);
  }
  return { rule, folded, left, table, disputed: [...disputed].sort() };
};

/**
 * One rule for one operation and species: every test on a trait is asked of the engine, the rest is kept as a shared table. Undefined where it can never fire.
 * Species that are alike in the traits that the rule turns on share what is left of it.
 */
export const specialise = async <Whole extends Conditional>(rule: Whole, operation: string, traits: Traits, knowledge: Knowledge, folds: Folds): Promise<Residual<Whole> | undefined> => {
  const turning = turnsOn(folds, rule);
  const daysNeeded = turning.ofOperation ? knowledge.operations[operation]?.daysNeeded?.days : undefined;
  const key = JSON.stringify([daysNeeded, ...turning.traits.map((id) => valuesOf(traits[id]))]);
  const residual = turning.residuals.get(key) ?? made(rule, turning, daysNeeded, traits, knowledge, folds);
  turning.residuals.set(key, residual);
  return (await residual) as Residual<Whole> | undefined;
};

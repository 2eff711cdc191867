import { Engine, Fact, type NestedCondition, type TopLevelCondition } from 'json-rules-engine';
import type { Value } from '../knowledge/knowledge.js';
import type { Condition, Test } from './condition.js';

/** What json-rules-engine says of a condition, and of each of its tests in file order. */
export interface Answer {
  readonly certainly: boolean;
  readonly possibly: boolean;
  readonly testsCertain: readonly boolean[];
  readonly testsPossible: readonly boolean[];
}

/** The values that each fact may have: one where it is known. */
export type Possible = ReadonlyMap<string, readonly Value[]>;

type Mode = 'certainly' | 'possibly';

const compileTest = (test: Test, mode: Mode): NestedCondition => {
  const every = mode === 'certainly' && test.lenient !== true;
  const limits = test.limits ?? ('is' in test.limit ? [test.limit.is] : []);
  const one = (limit: Value): NestedCondition => ({ fact: test.fact, operator: `${every ? 'everyFact' : 'someFact'}:${test.operator}`, value: limit });
  if (limits.length === 1) return one(limits[0]!);
  return mode === 'certainly' ? { all: limits.map(one) } : { any: limits.map(one) };
};

/** A condition in the format of json-rules-engine, for facts that are arrays of the values they may have. */
export const compileCondition = (condition: Condition, mode: Mode): NestedCondition => {
  switch (condition.kind) {
    case 'test':
      return compileTest(condition, mode);
    case 'all':
      return { all: condition.of.map((part) => compileCondition(part, mode)) };
    case 'any':
      return { any: condition.of.map((part) => compileCondition(part, mode)) };
    case 'not':
    case 'constant':
      throw new Error(`a condition must be in normal form and folded, found ${condition.kind}`);
  }
};

interface Judged {
  readonly result?: boolean;
  readonly all?: readonly Judged[];
  readonly any?: readonly Judged[];
}

const judgedTests = (condition: Condition, judged: Judged | undefined): readonly boolean[] => {
  if (condition.kind === 'all' || condition.kind === 'any') return condition.of.flatMap((part, i) => judgedTests(part, (judged?.all ?? judged?.any)?.[i]));
  return [judged?.result === true];
};

/** Asks json-rules-engine, once: a fresh engine for each run, since overlapping runs of one lose findings; facts without its cache, since hashing them costs more than the run. */
export const askEngine = async (condition: Condition, possible: Possible): Promise<Answer> => {
  const engine = new Engine();
  for (const [id, values] of possible) engine.addFact(new Fact(id, values as unknown as object, { cache: false }));
  const root = (mode: Mode): TopLevelCondition => ({ all: [compileCondition(condition, mode)] });
  for (const mode of ['certainly', 'possibly'] as const) engine.addRule({ name: mode, conditions: root(mode), event: { type: 'holds' } });
  const { results, failureResults } = await engine.run();
  const judgedBy = (mode: Mode): { readonly holds: boolean; readonly tests: readonly boolean[] } => {
    const result = results.find((each) => each.name === mode) ?? failureResults.find((each) => each.name === mode);
    const top = result?.conditions as Judged | undefined;
    return { holds: result?.result === true, tests: judgedTests(condition, top?.all?.[0]) };
  };
  const certain = judgedBy('certainly');
  const maybe = judgedBy('possibly');
  return Object.freeze({ certainly: certain.holds, possibly: maybe.holds, testsCertain: certain.tests, testsPossible: maybe.tests });
};

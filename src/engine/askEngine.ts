import { Engine, Fact, type NestedCondition, type TopLevelCondition } from 'json-rules-engine';
import type { Value } from '../knowledge/knowledge.js';
import { type Condition, type Test, testsOf } from './condition.js';

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

/** A condition that the engine is asked about, and the values that its facts may have. */
export interface Asked {
  readonly condition: Condition;
  readonly possible: Possible;
}

type NameOf = (fact: string) => string;

const limitsOf = (test: Test): readonly Value[] => test.limits ?? ('is' in test.limit ? [test.limit.is] : []);

const compileTest = (test: Test, mode: Mode, nameOf: NameOf): NestedCondition => {
  const every = mode === 'certainly' && test.lenient !== true;
  const limits = limitsOf(test);
  const one = (limit: Value): NestedCondition => ({ fact: nameOf(test.fact), operator: `${every ? 'everyFact' : 'someFact'}:${test.operator}`, value: limit });
  if (limits.length === 1) return one(limits[0]!);
  return mode === 'certainly' ? { all: limits.map(one) } : { any: limits.map(one) };
};

/** A condition in the format of json-rules-engine, for facts that are arrays of the values they may have. */
const compileCondition = (condition: Condition, mode: Mode, nameOf: NameOf): NestedCondition => {
  switch (condition.kind) {
    case 'test':
      return compileTest(condition, mode, nameOf);
    case 'all':
      return { all: condition.of.map((part) => compileCondition(part, mode, nameOf)) };
    case 'any':
      return { any: condition.of.map((part) => compileCondition(part, mode, nameOf)) };
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

/** Where each fact has one value, and each test one limit, both ways of asking are one question. */
const modesFor = ({ condition, possible }: Asked): readonly Mode[] =>
  [...possible.values()].every((values) => values.length === 1) && testsOf(condition).every((test) => limitsOf(test).length === 1) ? ['certainly'] : ['certainly', 'possibly'];

/**
 * Asks json-rules-engine about some conditions in one run, each with facts of its own.
 *
 * A fresh engine for each run, since overlapping runs of one lose findings; facts without its cache, since hashing them costs more than the run.
 */
export const askEngine = async (asked: readonly Asked[]): Promise<readonly Answer[]> => {
  const engine = new Engine();
  const modes = asked.map(modesFor);
  asked.forEach(({ condition, possible }, i) => {
    const nameOf: NameOf = (fact) => `${i} ${fact}`;
    for (const [id, values] of possible) engine.addFact(new Fact(nameOf(id), values as unknown as object, { cache: false }));
    const root = (mode: Mode): TopLevelCondition => ({ all: [compileCondition(condition, mode, nameOf)] });
    for (const mode of modes[i]!) engine.addRule({ name: `${i} ${mode}`, conditions: root(mode), event: { type: 'holds' } });
  });
  const { results, failureResults } = await engine.run();
  const judged = new Map([...failureResults, ...results].map((result) => [result.name, result]));
  return asked.map(({ condition }, i) => {
    const judgedBy = (mode: Mode): { readonly holds: boolean; readonly tests: readonly boolean[] } => {
      const result = judged.get(`${i} ${mode}`);
      const top = result?.conditions as Judged | undefined;
      /* Cells are kept in their thousands: a copy is as long as the list, where one that has grown has room for sixteen more. */
      return { holds: result?.result === true, tests: judgedTests(condition, top?.all?.[0]).slice() };
    };
    const certain = judgedBy('certainly');
    const maybe = modes[i]!.length === 1 ? certain : judgedBy('possibly');
    return Object.freeze({ certainly: certain.holds, possibly: maybe.holds, testsCertain: certain.tests, testsPossible: maybe.tests });
  });
};

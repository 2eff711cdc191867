import type { Value } from '../knowledge/knowledge.js';
import { type Condition, type Operator, type Test, testsOf } from './condition.js';
import type { Fired } from './evaluate.js';

/** A limit as an assessment shows it: `{ above: 0.3 }`, `{ is: 'none' }`, `{ not: ['growing'] }`. */
export type ShownLimit = Readonly<Record<string, Value | readonly Value[]>>;

/** A test on which a rule fired. */
export interface Ground {
  readonly fact: string;
  readonly limit: ShownLimit;
  /** The trait that set the limit. */
  readonly trait?: string;
}

const shown = (operator: Operator, limit: Value | readonly Value[]): ShownLimit => {
  switch (operator) {
    case 'equal':
      return { is: limit };
    case 'notEqual':
      return { not: limit };
    case 'in':
      return { in: limit };
    case 'notIn':
      return { not: limit };
    case 'greaterThan':
      return { above: limit };
    case 'greaterThanInclusive':
      return { atLeast: limit };
    case 'lessThan':
      return { below: limit };
    case 'lessThanInclusive':
      return { atMost: limit };
    case 'contains':
      return { has: limit };
    case 'doesNotContain':
      return { lacks: limit };
  }
};

const limitOf = (test: Test): Value | readonly Value[] => {
  const limits = test.limits ?? ('is' in test.limit ? [test.limit.is] : []);
  return limits.length === 1 ? limits[0]! : (limits as readonly Value[]);
};

const groundsBy = (fired: Fired): readonly Ground[] => {
  const { folded, left } = fired.residual;
  const order = new Map<Test, number>(testsOf(left).map((test, i) => [test, i]));
  const judged = fired.fires === 'certainly' ? fired.answer?.testsCertain : fired.answer?.testsPossible;
  const holds = (condition: Condition): boolean => {
    switch (condition.kind) {
      case 'constant':
        return condition.holds;
      case 'test':
        return judged?.[order.get(condition) ?? -1] === true;
      case 'all':
        return condition.of.every(holds);
      case 'any':
        return condition.of.some(holds);
      case 'not':
        return false;
    }
  };
  const grounds = (condition: Condition): readonly Test[] => {
    switch (condition.kind) {
      case 'constant':
        return condition.test === undefined ? [] : [condition.test];
      case 'test':
        return [condition];
      case 'all':
        return condition.of.flatMap(grounds);
      case 'any': {
        const first = condition.of.find((part) => part.kind === 'constant' && part.holds) ?? condition.of.find(holds);
        return first === undefined ? [] : grounds(first);
      }
      case 'not':
        return [];
    }
  };
  const when = folded.kind === 'all' ? folded.of[0]! : folded;
  return grounds(when).map((test) => ({ fact: test.fact, limit: shown(test.operator, limitOf(test)), ...('trait' in test.limit ? { trait: test.limit.trait } : {}) }));
};

const kept = new WeakMap<Fired['residual'], Map<Fired['answer'], readonly Ground[]>>();

/** The tests that a finding stands on, in file order: all that hold, and of an `any` the first. What only did not lift the rule is left out. An answer is kept in its cell, and so are its grounds. */
export const groundsOf = (fired: Fired): readonly Ground[] => {
  const ofRule = kept.get(fired.residual) ?? new Map<Fired['answer'], readonly Ground[]>();
  kept.set(fired.residual, ofRule);
  const grounds = ofRule.get(fired.answer) ?? groundsBy(fired);
  ofRule.set(fired.answer, grounds);
  return grounds;
};

import type { Value } from '../knowledge/knowledge.js';

/** The operators of json-rules-engine that our rules compile to. */
export type Operator =
  | 'equal'
  | 'notEqual'
  | 'in'
  | 'notIn'
  | 'greaterThan'
  | 'greaterThanInclusive'
  | 'lessThan'
  | 'lessThanInclusive'
  | 'contains'
  | 'doesNotContain';

/** What a fact is held against: a constant, a trait of the species, or a figure of the operation. */
export type Limit =
  | { readonly is: Value }
  | { readonly trait: string; readonly times: number; readonly plus: number }
  | { readonly operation: 'daysNeeded'; readonly times: number; readonly plus: number };

export interface Test {
  readonly kind: 'test';
  readonly fact: string;
  readonly operator: Operator;
  readonly limit: Limit;
  /** The limit once the species is known: several where sources disagree on the trait. */
  readonly limits?: readonly Value[];
  /** Turned into its opposite on the way to normal form: what is missing then does hold. */
  readonly denied?: true;
  /** In a reason to lift the rule, on a fact that stands nowhere else in it: not known counts as not lifting. */
  readonly lenient?: true;
}

/** What a test comes to once species and operation are known. */
export interface Constant {
  readonly kind: 'constant';
  readonly holds: boolean;
  readonly test?: Test;
}

/** A condition as frozen plain nodes; `not` is gone once it is in normal form. */
export type Condition =
  | { readonly kind: 'all'; readonly of: readonly Condition[] }
  | { readonly kind: 'any'; readonly of: readonly Condition[] }
  | { readonly kind: 'not'; readonly of: Condition }
  | Constant
  | Test;

export const all = (of: readonly Condition[]): Condition => ({ kind: 'all', of });
export const any = (of: readonly Condition[]): Condition => ({ kind: 'any', of });

/** Every test in a condition, in file order. */
export const testsOf = (condition: Condition): readonly Test[] => {
  switch (condition.kind) {
    case 'test':
      return [condition];
    case 'constant':
      return [];
    case 'not':
      return testsOf(condition.of);
    case 'all':
    case 'any':
      return condition.of.flatMap(testsOf);
  }
};

import { all, any, type Condition, type Operator } from './condition.js';

const opposite: Readonly<Record<Operator, Operator>> = {
  equal: 'notEqual',
  notEqual: 'equal',
  in: 'notIn',
  notIn: 'in',
  greaterThan: 'lessThanInclusive',
  lessThanInclusive: 'greaterThan',
  lessThan: 'greaterThanInclusive',
  greaterThanInclusive: 'lessThan',
  contains: 'doesNotContain',
  doesNotContain: 'contains',
};

/** Negation normal form: `not` is carried down to the tests, whose operator turns into its opposite. */
export const normalForm = (condition: Condition, denied = false): Condition => {
  switch (condition.kind) {
    case 'not':
      return normalForm(condition.of, !denied);
    case 'constant':
      return denied ? { kind: 'constant', holds: !condition.holds } : condition;
    case 'test':
      return denied ? { ...condition, operator: opposite[condition.operator], denied: true } : condition;
    case 'all':
    case 'any': {
      const parts = condition.of.map((part) => normalForm(part, denied));
      return (condition.kind === 'all') === denied ? any(parts) : all(parts);
    }
  }
};

import type { Value, WrittenCondition } from '../knowledge/knowledge.js';
import { all, any, type Condition, type Limit, type Operator } from './condition.js';

const comparisons: Readonly<Record<string, Operator>> = { above: 'greaterThan', below: 'lessThan', atLeast: 'greaterThanInclusive', atMost: 'lessThanInclusive' };

type Members = Readonly<Record<string, unknown>>;

const limitOf = (written: unknown): Limit => {
  if (typeof written !== 'object' || written === null) return { is: written as Value };
  const { trait, operation, times = 1, plus = 0 } = written as { trait?: string; operation?: 'daysNeeded'; times?: number; plus?: number };
  if (trait !== undefined) return { trait, times, plus };
  if (operation !== undefined) return { operation, times, plus };
  return { is: 0 };
};

const test = (fact: string, operator: Operator, limit: Limit): Condition => ({ kind: 'test', fact, operator, limit });

const operandOf = (fact: string, written: unknown): Condition => {
  if (Array.isArray(written)) return test(fact, 'in', { is: written as readonly string[] });
  if (typeof written !== 'object' || written === null) return test(fact, 'equal', { is: written as Value });
  const parts = Object.entries(written as Members).map(([key, operand]): Condition => {
    if (key === 'not') return { kind: 'not', of: operandOf(fact, operand) };
    if (key === 'has') return test(fact, 'contains', { is: operand as string });
    if (key === 'in') return test(fact, 'in', limitOf(operand));
    if (key === 'between') {
      const [least, most] = operand as readonly [number, number];
      return all([test(fact, 'greaterThanInclusive', { is: least }), test(fact, 'lessThanInclusive', { is: most })]);
    }
    return test(fact, comparisons[key] ?? 'equal', limitOf(operand));
  });
  return parts.length === 1 ? parts[0]! : all(parts);
};

/** A condition as a rule file writes it, as nodes; the file has passed its schema. */
export const parseCondition = (written: WrittenCondition): Condition => {
  const [key, operand] = Object.entries(written)[0] ?? ['all', []];
  if (key === 'any' || key === 'all') return (key === 'any' ? any : all)((operand as readonly WrittenCondition[]).map(parseCondition));
  return operandOf(key, operand);
};

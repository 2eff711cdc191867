import fc from 'fast-check';
import { expect, test } from 'vitest';
import { all, any, type Condition, type Operator } from '../../src/engine/condition.js';
import { normalForm } from '../../src/engine/normalForm.js';

const is = (fact: string, operator: Operator = 'equal', limit: string | number = 'x'): Condition => ({ kind: 'test', fact, operator, limit: { is: limit } });

const denied = (fact: string): Condition => ({ ...is(fact, 'notEqual'), denied: true }) as Condition;

test('a denied comparison turns into its opposite', () => {
  const opposites: readonly [Operator, Operator][] = [['equal', 'notEqual'], ['in', 'notIn'], ['greaterThan', 'lessThanInclusive'], ['lessThan', 'greaterThanInclusive'], ['contains', 'doesNotContain']];
  for (const [one, other] of opposites) {
    expect(normalForm({ kind: 'not', of: is('a', one) })).toEqual({ ...is('a', other), denied: true });
    expect(normalForm({ kind: 'not', of: is('a', other) })).toEqual({ ...is('a', one), denied: true });
  }
});

test('not all of some is any of them denied, and the other way round', () => {
  expect(normalForm({ kind: 'not', of: all([is('a'), any([is('b'), is('c')])]) })).toEqual(any([denied('a'), all([denied('b'), denied('c')])]));
});

test('to deny twice is to leave as it was', () => {
  expect(normalForm({ kind: 'not', of: { kind: 'not', of: is('a') } })).toEqual(is('a'));
});

const trees: fc.Arbitrary<Condition> = fc.letrec<{ tree: Condition }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 4 },
    fc.tuple(fc.constantFrom('a', 'b', 'c'), fc.constantFrom<Operator>('greaterThan', 'lessThan', 'greaterThanInclusive', 'lessThanInclusive', 'equal', 'notEqual'), fc.integer({ min: 0, max: 3 })).map(([fact, operator, limit]) => is(fact, operator, limit)),
    fc.array(tie('tree'), { maxLength: 3 }).map(all),
    fc.array(tie('tree'), { maxLength: 3 }).map(any),
    tie('tree').map((of): Condition => ({ kind: 'not', of })),
    fc.boolean().map((holds): Condition => ({ kind: 'constant', holds })),
  ),
})).tree;

const holds = (condition: Condition, facts: Readonly<Record<string, number>>): boolean => {
  switch (condition.kind) {
    case 'constant': return condition.holds;
    case 'not': return !holds(condition.of, facts);
    case 'all': return condition.of.every((part) => holds(part, facts));
    case 'any': return condition.of.some((part) => holds(part, facts));
    case 'test': {
      const [value, limit] = [facts[condition.fact]!, (condition.limit as { readonly is: number }).is];
      return { greaterThan: value > limit, lessThan: value < limit, greaterThanInclusive: value >= limit, lessThanInclusive: value <= limit, equal: value === limit, notEqual: value !== limit }[condition.operator as 'equal'];
    }
  }
};

const hasNot = (condition: Condition): boolean => condition.kind === 'not' || ((condition.kind === 'all' || condition.kind === 'any') && condition.of.some(hasNot));

test('normal form has no `not`, and means the same whatever the facts', () => {
  fc.assert(fc.property(trees, fc.record({ a: fc.nat(3), b: fc.nat(3), c: fc.nat(3) }), (tree, facts) => {
    const normal = normalForm(tree);
    expect(hasNot(normal)).toBe(false);
    expect(holds(normal, facts)).toBe(holds(tree, facts));
  }), { numRuns: 2_000 });
});

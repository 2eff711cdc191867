import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { tableOf } from '../../src/engine/cells.js';
import { bucketsOf } from '../../src/engine/buckets.js';
import type { Operator, Test } from '../../src/engine/condition.js';
import type { FactWord } from '../../src/knowledge/knowledge.js';

const tested = (fact: string, operator: Operator, is: string | number | boolean | readonly string[]): Test => ({ kind: 'test', fact, operator, limit: { is } });
const share: FactWord = { id: 'roots.shareRemoved', type: 'number', bounds: [0, 1], meaning: '' };
const days: FactWord = { id: 'days', type: 'number', bounds: [0, 366], whole: true, meaning: '' };

describe('numbers', () => {
  test('two limits cut a number into five classes: below, at, between, at, above', () => {
    const buckets = bucketsOf(share.id, share, [tested(share.id, 'greaterThan', 0.3), tested(share.id, 'lessThan', 0.5)]);
    expect(buckets.count).toBe(5);
    expect([0.1, 0.3, 0.4, 0.5, 0.9].map((value) => buckets.of(value))).toEqual([1, 2, 4, 8, 16]);
  });

  test('a number that is not known falls into every class within its bounds, and into no other', () => {
    const buckets = bucketsOf(share.id, share, [tested(share.id, 'lessThan', 0), tested(share.id, 'greaterThan', 0.5), tested(share.id, 'greaterThan', 1)]);
    /* below 0 and above 1 cannot be */
    expect(buckets.among({ state: 'unknown', from: 'unknown' })).toBe(0b0111110);
  });

  test('a number within told bounds falls into the classes that the bounds reach', () => {
    const buckets = bucketsOf(share.id, share, [tested(share.id, 'greaterThan', 0.3), tested(share.id, 'greaterThan', 0.6)]);
    expect(buckets.among({ state: 'unknown', among: { atLeast: 0.3, atMost: 0.5 }, from: 'season' })).toBe(0b00110);
    expect(buckets.among({ state: 'unknown', among: { atLeast: 0.4, atMost: 0.4 }, from: 'season' })).toBe(0b00100);
  });

  test('a number that counts cannot lie between neighbours', () => {
    const buckets = bucketsOf(days.id, days, [tested(days.id, 'lessThan', 3), tested(days.id, 'lessThan', 4)]);
    expect(buckets.among({ state: 'unknown', from: 'unknown' }) & 0b00100).toBe(0);
  });

  test('a number that may have one of a few values falls into the classes of those', () => {
    const buckets = bucketsOf('n', { ...days, id: 'n' }, [tested('n', 'greaterThan', 1)]);
    expect(buckets.among({ state: 'unknown', among: [0, 1] as never, from: 'unknown' })).toBe(0b011);
  });

  test('every value lies in just one class, and its stand-in answers every test as it does', () => {
    const operators = ['greaterThan', 'lessThan', 'greaterThanInclusive', 'lessThanInclusive', 'equal', 'notEqual'] as const;
    const holds = (operator: (typeof operators)[number], value: number, limit: number): boolean =>
      ({ greaterThan: value > limit, lessThan: value < limit, greaterThanInclusive: value >= limit, lessThanInclusive: value <= limit, equal: value === limit, notEqual: value !== limit })[operator];
    fc.assert(fc.property(fc.array(fc.tuple(fc.constantFrom(...operators), fc.integer({ min: -5, max: 5 })), { minLength: 1, maxLength: 6 }), fc.oneof(fc.integer({ min: -6, max: 6 }), fc.double({ min: -6, max: 6, noNaN: true })), (tests, value) => {
      const buckets = bucketsOf('x', { id: 'x', type: 'number', meaning: '' }, tests.map(([operator, limit]) => tested('x', operator, limit)));
      const bit = buckets.of(value);
      expect(Math.log2(bit) % 1).toBe(0);
      const stand = buckets.stands[Math.log2(bit)] as number;
      for (const [operator, limit] of tests) expect(holds(operator, stand, limit)).toBe(holds(operator, value, limit));
      expect(buckets.among({ state: 'unknown', among: { atLeast: value, atMost: value }, from: 'x' })).toBe(bit);
    }), { numRuns: 2_000 });
  });
});

describe('choices', () => {
  const vigour: FactWord = { id: 'tree.vigour', type: 'choice', values: ['strong', 'steady', 'weak'], meaning: '' };

  test('values that no test names share a class', () => {
    const buckets = bucketsOf(vigour.id, vigour, [tested(vigour.id, 'equal', 'weak')]);
    expect(buckets.count).toBe(2);
    expect(buckets.of('strong')).toBe(buckets.of('steady'));
    expect(buckets.of('weak')).not.toBe(buckets.of('steady'));
  });

  test('where tests name every value there is no class besides', () => {
    expect(bucketsOf(vigour.id, vigour, [tested(vigour.id, 'in', ['strong', 'steady', 'weak'])]).count).toBe(3);
  });

  test('what is not known falls into every class, what may be one of two into theirs', () => {
    const buckets = bucketsOf(vigour.id, vigour, [tested(vigour.id, 'in', ['weak', 'steady'])]);
    expect(buckets.among({ state: 'unknown', from: 'unknown' })).toBe(0b111);
    expect(buckets.among({ state: 'unknown', among: ['weak', 'strong'], from: 'unknown' })).toBe(buckets.of('weak') | buckets.of('strong'));
  });

  test('yes and no are two classes', () => {
    const buckets = bucketsOf('cut.foliageLeft', { id: 'cut.foliageLeft', type: 'boolean', meaning: '' }, [tested('cut.foliageLeft', 'equal', false)]);
    expect(buckets.count).toBe(2);
    expect(buckets.of(true)).not.toBe(buckets.of(false));
  });
});

test('a list falls into a class by which of the asked-for members it holds', () => {
  const word: FactWord = { id: 'law.names', type: 'list', values: ['invasive', 'protected', 'trade'], meaning: '' };
  const buckets = bucketsOf(word.id, word, [tested(word.id, 'contains', 'invasive'), tested(word.id, 'contains', 'trade')]);
  expect(buckets.count).toBe(4);
  expect(buckets.of(['invasive', 'protected'])).toBe(buckets.of(['invasive']));
  expect(new Set([[], ['invasive'], ['trade'], ['trade', 'invasive']].map((list) => buckets.of(list))).size).toBe(4);
  expect(buckets.among({ state: 'unknown', from: 'unknown' })).toBe(0b1111);
});

test('a rule that cuts a fact into more classes than a number of bits can hold is refused in words', () => {
  const word: FactWord = { id: 'x', type: 'number', meaning: '' };
  expect(() => tableOf({ kind: 'all', of: Array.from({ length: 15 }, (_, i) => tested('x', 'greaterThan', i)) }, { x: word })).toThrow(/31 classes: at most 30/);
});

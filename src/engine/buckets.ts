import type { FactWord, Value } from '../knowledge/knowledge.js';
import type { FactValue, Span } from '../facts/factValue.js';
import type { Test } from './condition.js';

/**
 * The few classes into which a rule's thresholds cut one fact: every value of a class gives the rule the same answer.
 * Of `n` sorted limits of a number there are `2n + 1`: below the first, at it, between it and the next, and so on.
 */
export interface Buckets {
  readonly fact: string;
  readonly count: number;
  /** One value that stands for each class. */
  readonly stands: readonly Value[];
  /** The classes that this value, or any value that it may have, falls into, as bits. */
  readonly of: (value: Value) => number;
  readonly among: (fact: FactValue) => number;
}

const limitsOf = (tests: readonly Test[]): readonly Value[] => tests.flatMap((test) => test.limits ?? ('is' in test.limit ? [test.limit.is] : []));

const numberBuckets = (fact: string, word: FactWord | undefined, tests: readonly Test[]): Buckets => {
  const limits = [...new Set(limitsOf(tests) as number[])].sort((a, b) => a - b);
  const stands = limits.flatMap((limit, i) => [i === 0 ? limit - 1 : (limits[i - 1]! + limit) / 2, limit]);
  stands.push((limits.at(-1) ?? 0) + 1);
  const bucketOf = (value: number): number => {
    let i = 0;
    while (i < limits.length && value > limits[i]!) i++;
    return i < limits.length && value === limits[i] ? 2 * i + 1 : 2 * i;
  };
  const whole = word?.whole === true;
  const reaches = (bucket: number, least: number, most: number): boolean => {
    const after = bucket === 0 ? -Infinity : limits[(bucket - 1) >> 1]!;
    if (bucket % 2 === 1) return after >= least && after <= most;
    const before = limits[bucket >> 1] ?? Infinity;
    if (!whole) return after < most && before > least && least <= most;
    return Math.max(Math.floor(after) + 1, Math.ceil(least)) <= Math.min(Math.ceil(before) - 1, Math.floor(most));
  };
  return {
    fact,
    count: stands.length,
    stands,
    of: (value) => 1 << bucketOf(value as number),
    among: (value) => {
      if (Array.isArray(value.among)) return (value.among as readonly number[]).reduce((mask, each) => mask | (1 << bucketOf(each)), 0);
      const span = value.among as Span | undefined;
      const least = Math.max(word?.bounds?.[0] ?? -Infinity, span?.atLeast ?? -Infinity);
      const most = Math.min(word?.bounds?.[1] ?? Infinity, span?.atMost ?? Infinity);
      let mask = 0;
      for (let bucket = 0; bucket < stands.length; bucket++) if (reaches(bucket, least, most)) mask |= 1 << bucket;
      return mask;
    },
  };
};

const choiceBuckets = (fact: string, values: readonly Value[] | undefined, tests: readonly Test[]): Buckets => {
  const mentioned = [...new Set(limitsOf(tests).flatMap((limit) => limit as Value | readonly Value[]))] as Value[];
  const other = values?.find((value) => !mentioned.includes(value)) ?? (values === undefined ? '\u0000other' : undefined);
  const stands = other === undefined ? mentioned : [...mentioned, other];
  const bitOf = (value: Value): number => {
    const i = mentioned.indexOf(value);
    return 1 << (i < 0 ? mentioned.length : i);
  };
  const every = (1 << stands.length) - 1;
  return {
    fact,
    count: stands.length,
    stands,
    of: bitOf,
    among: (value) => (value.among === undefined ? every : (value.among as readonly Value[]).reduce<number>((mask, each) => mask | bitOf(each), 0)),
  };
};

const listBuckets = (fact: string, tests: readonly Test[]): Buckets => {
  const members = [...new Set(limitsOf(tests) as string[])];
  const count = 1 << members.length;
  const bitOf = (list: Value): number => 1 << members.reduce((mask, member, i) => ((list as readonly string[]).includes(member) ? mask | (1 << i) : mask), 0);
  const every = 2 ** count - 1;
  return {
    fact,
    count,
    stands: Array.from({ length: count }, (_, mask) => members.filter((__, i) => (mask & (1 << i)) !== 0)),
    of: bitOf,
    among: (value) => (value.among === undefined ? every : (value.among as readonly Value[]).reduce<number>((mask, list) => mask | bitOf(list), 0)),
  };
};

/** The classes of one fact under the tests that a rule makes of it. */
export const bucketsOf = (fact: string, word: FactWord | undefined, tests: readonly Test[]): Buckets => {
  const type = word?.type;
  return (
    type === 'number' ? numberBuckets(fact, word, tests) : type === 'list' ? listBuckets(fact, tests) : choiceBuckets(fact, type === 'boolean' ? [true, false] : word?.values, tests)
  );
};

/** More classes than the bits of a number can hold. */
export const tooMany = ({ count }: Buckets): boolean => count > 30;

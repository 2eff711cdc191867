import { expect, test } from 'vitest';
import { assumed, type FactValue, known, unknown } from '../../src/facts/factValue.js';
import { workOut } from '../../src/facts/workOut.js';

const sum = (...values: readonly unknown[]): number => values.reduce<number>((total, value) => total + Number(value), 0);

test('what is worked out of what is known is known', () => {
  expect(workOut([known(1, 'given'), known(2, 'given')], 'worked-out', sum)).toEqual({ state: 'known', value: 3, from: 'worked-out' });
});

test('what rests on an assumption is assumed, what rests on an estimate is estimated', () => {
  expect(workOut([known(1, 'given'), assumed(2)], 'worked-out', sum).state).toBe('assumed');
  const estimated: FactValue = { state: 'estimated', value: 2, from: 'estimated' };
  expect(workOut([assumed(1), estimated], 'worked-out', sum).state).toBe('estimated');
});

test('it is unknown only where it really depends on what is not known', () => {
  const vigour = unknown(['strong', 'weak']);
  expect(workOut([vigour], 'worked-out', (value) => (value === 'weak' ? 'slow' : 'fast'))).toEqual({ state: 'unknown', among: ['fast', 'slow'], from: 'unknown' });
  expect(workOut([vigour], 'worked-out', () => 'slow')).toMatchObject({ state: 'known', value: 'slow' });
});

test('every combination of what is not known is looked at', () => {
  const either = unknown([0, 1] as never);
  expect(workOut([either, either], 'worked-out', sum).among).toEqual([0, 1, 2]);
});

test('a number that may be anything leaves it open', () => {
  expect(workOut([unknown()], 'worked-out', sum)).toEqual({ state: 'unknown', from: 'unknown' });
});

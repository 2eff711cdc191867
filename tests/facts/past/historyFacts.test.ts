import { describe, expect, test } from 'vitest';
import { spanOf } from '../../../src/facts/past/logEntries.js';
import { isoOf } from '../../../src/season/day.js';
import { factsOf } from '../factsOf.js';

type Members = Readonly<Record<string, unknown>>;

const since = async (fact: string, tree: Members, operation: Members = { op: 'repot' }, date: string | undefined = '2026-04-10'): Promise<unknown> =>
  (await factsOf({ tree: { species: 'acer-palmatum', ...tree }, operation, ...(date === '' ? {} : { date }) }))(fact).value;

describe('a date that is known to the month or the year', () => {
  test('spans from its first day to its last', () => {
    const span = (iso: string): readonly string[] => [isoOf(spanOf(iso).earliest), isoOf(spanOf(iso).latest)];
    expect(span('2024')).toEqual(['2024-01-01', '2024-12-31']);
    expect(span('2024-02')).toEqual(['2024-02-01', '2024-02-29']);
    expect(span('2025-12')).toEqual(['2025-12-01', '2025-12-31']);
    expect(span('2025-04-10')).toEqual(['2025-04-10', '2025-04-10']);
  });

  test('counts from its last day, and never from a day to come', async () => {
    expect(await since('history.daysSinceRepot', { lastRepotted: '2026-04-01' })).toBe(9);
    expect(await since('history.daysSinceRepot', { lastRepotted: '2026-03' })).toBe(10);
    expect(await since('history.daysSinceRepot', { lastRepotted: '2025' })).toBe(100);
    expect(await since('history.daysSinceRepot', { lastRepotted: '2026' })).toBe(0);
  });
});

describe('the last repotting', () => {
  test('is the later of what is told and what the log tells', async () => {
    const log = [{ op: 'repot', date: '2026-03-31' }];
    expect(await since('history.daysSinceRepot', { lastRepotted: '2025', log })).toBe(10);
    expect(await since('history.daysSinceRepot', { log })).toBe(10);
    expect(await since('history.daysSinceRepot', { lastRepotted: 'never' })).toBe(36500);
  });

  test('of a tree that was collected or divided counts too', async () => {
    for (const op of ['collect', 'divide']) expect(await since('history.daysSinceRepot', { log: [{ op, date: '2026-03-31' }] })).toBe(10);
  });

  test('in a log of days to come is none', async () => {
    expect(await since('history.daysSinceRepot', { log: [{ op: 'repot', date: '2026-05-01' }] })).toBe(36500);
  });

  test('is not known where no day is told', async () => {
    const fact = (await factsOf({ tree: { species: 'acer-palmatum', lastRepotted: '2025' }, operation: { op: 'repot' } }))('history.daysSinceRepot');
    expect(fact.state).not.toBe('known');
  });
});

describe('the log', () => {
  test('trade names count as the work that they mean', async () => {
    expect(await since('history.daysSinceRepot', { log: [{ op: 'root pruning', date: '2026-03-31' }] })).toBe(10);
    expect(await since('history.daysSinceCandleCut', { log: [{ op: 'decandling', date: '2026-03-31' }] }, { op: 'candle-cut' })).toBe(10);
  });

  test('of several pieces of work the latest counts, in whatever order they are written', async () => {
    const log = [{ op: 'cut-back', date: '2026-04-05' }, { op: 'remove-branch', date: '2025-05-01' }];
    expect(await since('history.daysSinceCut', { log })).toBe(5);
    expect(await since('history.daysSinceCut', { log: [...log].reverse() })).toBe(5);
  });

  test('hard work is what the operation’s strain says: many roots are, few are not', async () => {
    const after = async (rootsRemoved: number): Promise<unknown> => await since('history.daysSinceHardWork', { log: [{ op: 'repot', rootsRemoved, date: '2026-03-31' }] });
    expect(await after(0.4)).toBe(10);
    expect(await after(0.05)).toBe(36500);
  });

  test('a chop is hard work always, a seal never', async () => {
    expect(await since('history.daysSinceHardWork', { log: [{ op: 'trunk-chop', date: '2026-03-31' }] })).toBe(10);
    expect(await since('history.daysSinceHardWork', { log: [{ op: 'seal-wound', date: '2026-03-31' }] })).toBe(36500);
  });

  test('wire is on until it is taken off', async () => {
    const wired = { op: 'wire', date: '2026-03-31' };
    expect(await since('history.wiredDays', { log: [wired] }, { op: 'unwire' })).toBe(10);
    expect(await since('history.wiredDays', { log: [wired, { op: 'unwire', date: '2026-04-05' }] }, { op: 'unwire' })).toBe(0);
  });

  test('a stub has the age of its own cut, not of another branch', async () => {
    const log = [{ op: 'remove-branch', finish: 'stub', branch: 'low-left', date: '2025-10-10' }, { op: 'remove-branch', finish: 'stub', branch: 'high', date: '2026-03-31' }];
    expect(await since('history.stubAgeDays', { log }, { op: 'clean-stub', branch: 'high' })).toBe(10);
    expect(await since('history.stubAgeDays', { log }, { op: 'clean-stub', branch: 'low-left' })).toBe(182);
  });
});

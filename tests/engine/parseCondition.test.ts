import { expect, test } from 'vitest';
import { parseCondition } from '../../src/engine/parseCondition.js';

const one = (fact: string, operator: string, limit: unknown): unknown => ({ kind: 'test', fact, operator, limit });

test('a bare value asks for that value', () => {
  expect(parseCondition({ 'tree.vigour': 'weak' })).toEqual(one('tree.vigour', 'equal', { is: 'weak' }));
  expect(parseCondition({ 'cut.foliageLeft': false })).toEqual(one('cut.foliageLeft', 'equal', { is: false }));
  expect(parseCondition({ 'roots.shareRemoved': 0 })).toEqual(one('roots.shareRemoved', 'equal', { is: 0 }));
});

test('a list of values asks for one of them', () => {
  expect(parseCondition({ 'tree.vigour': ['weak', 'steady'] })).toEqual(one('tree.vigour', 'in', { is: ['weak', 'steady'] }));
});

test('above and below leave the limit out, at least and at most take it in', () => {
  for (const [written, operator] of [['above', 'greaterThan'], ['below', 'lessThan'], ['atLeast', 'greaterThanInclusive'], ['atMost', 'lessThanInclusive']] as const) {
    expect(parseCondition({ 'roots.shareRemoved': { [written]: 0.3 } })).toEqual(one('roots.shareRemoved', operator, { is: 0.3 }));
  }
});

test('between takes both its ends in', () => {
  expect(parseCondition({ 'roots.shareRemoved': { between: [0.1, 0.3] } })).toEqual({ kind: 'all', of: [one('roots.shareRemoved', 'greaterThanInclusive', { is: 0.1 }), one('roots.shareRemoved', 'lessThanInclusive', { is: 0.3 })] });
});

test('two comparisons of one fact must both hold', () => {
  expect(parseCondition({ 'roots.shareRemoved': { above: 0.1, atMost: 0.3 } })).toEqual({ kind: 'all', of: [one('roots.shareRemoved', 'greaterThan', { is: 0.1 }), one('roots.shareRemoved', 'lessThanInclusive', { is: 0.3 })] });
});

test('a limit may be a trait of the species, with a factor and a margin, or a figure of the operation', () => {
  expect(parseCondition({ 'exposure.lowestC': { below: { trait: 'roots.killC', plus: 3 } } })).toEqual(one('exposure.lowestC', 'lessThan', { trait: 'roots.killC', times: 1, plus: 3 }));
  expect(parseCondition({ 'roots.shareRemoved': { above: { trait: 'roots.maxRemoved', times: 0.5 } } })).toEqual(one('roots.shareRemoved', 'greaterThan', { trait: 'roots.maxRemoved', times: 0.5, plus: 0 }));
  expect(parseCondition({ 'season.growingDaysLeft': { below: { operation: 'daysNeeded' } } })).toEqual(one('season.growingDaysLeft', 'lessThan', { operation: 'daysNeeded', times: 1, plus: 0 }));
});

test('a phase may be asked for among those that a trait lists, or not among them', () => {
  const among = one('season.phase', 'in', { trait: 'roots.phases', times: 1, plus: 0 });
  expect(parseCondition({ 'season.phase': { in: { trait: 'roots.phases' } } })).toEqual(among);
  expect(parseCondition({ 'season.phase': { not: { in: { trait: 'roots.phases' } } } })).toEqual({ kind: 'not', of: among });
});

test('not takes a value, a list or a member', () => {
  expect(parseCondition({ 'tree.vigour': { not: 'weak' } })).toEqual({ kind: 'not', of: one('tree.vigour', 'equal', { is: 'weak' }) });
  expect(parseCondition({ 'tree.vigour': { not: ['weak', 'steady'] } })).toEqual({ kind: 'not', of: one('tree.vigour', 'in', { is: ['weak', 'steady'] }) });
  expect(parseCondition({ 'species.hazards.eaten': { not: { has: 'pets' } } })).toEqual({ kind: 'not', of: one('species.hazards.eaten', 'contains', { is: 'pets' }) });
});

test('any and all nest', () => {
  expect(parseCondition({ any: [{ 'tree.vigour': 'weak' }, { all: [{ 'tree.health': 'ailing' }] }] })).toEqual({ kind: 'any', of: [one('tree.vigour', 'equal', { is: 'weak' }), { kind: 'all', of: [one('tree.health', 'equal', { is: 'ailing' })] }] });
});

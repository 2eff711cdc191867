import { expect, test } from 'vitest';
import { didYouMean, nearest } from '../../src/knowledge/nearest.js';

const words = ['vigour', 'health', 'rootsRemoved', 'soilRemoved', 'remove-branch', 'remove-suckers'];

test('a slip of one letter is near: one left out, one too many, one changed, two swapped', () => {
  for (const slip of ['vigor', 'viggour', 'vigoar', 'vigoru']) expect(nearest(slip, words)).toEqual(['vigour']);
});

test('capitals are no slip', () => {
  expect(nearest('VIGOUR', words)).toEqual(['vigour']);
});

test('a beginning or a part of a name is near', () => {
  expect(nearest('remove', words)).toEqual(['remove-branch', 'remove-suckers']);
  expect(nearest('suckers', words)).toEqual(['remove-suckers']);
});

test('what is far from all is near to none', () => {
  expect(nearest('xylem', words)).toEqual([]);
  expect(didYouMean('xylem', words)).toBeUndefined();
});

test('the help names no more than three', () => {
  expect(nearest('abc', ['abcd', 'abce', 'abcf', 'abcg'])).toHaveLength(3);
  expect(didYouMean('vigor', words)).toBe('did you mean `vigour`?');
});

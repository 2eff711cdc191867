import { expect, test } from 'vitest';
import { knownCases } from '../cases/knownCases.js';
import { advisor } from '../shipped.js';
import { wrongBy } from './answerValidator.js';

/* Each answer has the shape that its published schema promises; those of plans and collections are held beside their own tests. */

test('a comparison has its published shape, with a variant that cannot be understood among its variants', async () => {
  for (const { id, proposal } of knownCases.slice(0, 20)) {
    const comparison = await advisor.compare(proposal, [{ date: '2027-03-15' }, { tree: { vigour: 'weak' } }, { date: 'someday' }]);
    expect(wrongBy('compare', comparison), id).toEqual([]);
    expect(comparison.variants).toHaveLength(4);
    expect(comparison.variants[3]!.issues?.[0]?.code).toBe('bad-date');
  }
  expect(wrongBy('compare', { schema: 'compare/1', variants: [], best: [] })).not.toEqual([]);
});

test('a year has its published shape, in the north, the south and where no frost comes', async () => {
  for (const [species, where] of [['acer-palmatum', { latitude: 52, longitude: 5 }], ['olea-europaea', { latitude: -34, longitude: 151 }], ['ficus-microcarpa', { latitude: 1, longitude: 104 }]] as const) {
    const year = await advisor.year({ tree: { species }, where, from: '2026-01-01', operations: [{ op: 'repot', rootsRemoved: 0.3 }, { op: 'feed' }] });
    expect(wrongBy('year', year), species).toEqual([]);
  }
  expect(wrongBy('year', { schema: 'year/1' })).not.toEqual([]);
});

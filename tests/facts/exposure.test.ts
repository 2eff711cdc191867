import { describe, expect, test } from 'vitest';
import { factsOf } from './factsOf.js';

type Members = Readonly<Record<string, unknown>>;

const ghent = { latitude: 51, longitude: 3.7, monthlyMinC: [0, 0, 2, 4, 8, 11, 13, 13, 10, 7, 3, 1], monthlyMaxC: [5, 7, 10, 14, 18, 21, 23, 23, 19, 14, 9, 6] };

const lowest = async (operation: Members, where: Members | undefined = ghent): Promise<{ readonly value?: unknown; readonly state: string }> =>
  (await factsOf({ tree: { species: 'juniperus-chinensis' }, operation, date: '2026-11-10', ...(where === undefined ? {} : { where }) }))('exposure.lowestC');

describe('the cold that a winter berth lets in', () => {
  test('what is told is taken', async () => {
    expect(await lowest({ op: 'overwinter', placement: 'cold-frame', lowestC: -7 })).toMatchObject({ value: -7, state: 'known' });
  });

  test('more shelter is never colder', async () => {
    const values = [];
    for (const placement of ['outdoors-exposed', 'outdoors-sheltered', 'cold-frame', 'cool-room', 'heated-room']) values.push((await lowest({ op: 'overwinter', placement })).value as number);
    expect(values).toEqual([...values].sort((a, b) => a - b));
    expect(values[0]).toBeLessThan(0);
    expect(values.at(-1)).toBeGreaterThan(10);
  });

  test('a room is as warm as rooms are, wherever it stands', async () => {
    expect((await lowest({ op: 'overwinter', placement: 'heated-room' }, { latitude: 64, longitude: 25 })).value).toBe((await lowest({ op: 'overwinter', placement: 'heated-room' })).value);
  });

  test('outdoors without a place is not known', async () => {
    expect((await lowest({ op: 'overwinter', placement: 'outdoors-exposed' }, {})).state).toBe('unknown');
  });
});

test('a step outdoors meets the coldest night that is told', async () => {
  expect(await lowest({ op: 'move-outdoors', coldestNightC: 3 })).toMatchObject({ value: 3 });
});

test('a tree planted out meets the winter of the place', async () => {
  const read = await factsOf({ tree: { species: 'juniperus-chinensis' }, operation: { op: 'plant-out' }, date: '2026-04-10', where: ghent });
  expect(read('exposure.lowestC').value).toBe(read('place.winterLowC').value);
});

import { expect, test } from 'vitest';
import { factsOf } from './factsOf.js';

const diseases = async (where: unknown, date: string): Promise<readonly unknown[]> => {
  const read = await factsOf({ tree: { species: 'quercus-rubra' }, operation: { op: 'remove-branch' }, date, where });
  return [read('disease.here').value, read('disease.inSeason').value];
};

test('oak wilt is about in Minnesota all year, and in season from April to July', async () => {
  expect(await diseases({ latitude: 45, longitude: -93.2, region: 'US-MN' }, '2026-01-15')).toEqual([['oak-wilt'], []]);
  expect(await diseases({ latitude: 45, longitude: -93.2, region: 'US-MN' }, '2026-05-20')).toEqual([['oak-wilt'], ['oak-wilt']]);
});

test('an oak in Ghent has no alert, and a point in Minnesota may have one', async () => {
  expect(await diseases({ latitude: 51, longitude: 3.7, region: 'BE' }, '2026-05-20')).toEqual([[], []]);
  expect(await diseases({ latitude: 45, longitude: -93.2 }, '2026-01-15')).toEqual([undefined, []]);
});

import { expect, test } from 'vitest';
import { createAdvisor } from '../../src/advisor.js';
import { engineRuns } from '../../src/upkeep/bench/engineRuns.js';
import { shipped, stations } from '../shipped.js';

/* What a year costs is counted in runs of the rules engine, which no clock blurs: cells are filled together, and never twice. */

const where = { place: 'koeln-cologne-germany' };

for (const species of ['acer-buergerianum', 'prunus-serrulata', 'pinus-thunbergii', 'ficus-microcarpa']) {
  test(`a year of ${species}, each day of every operation, asks the engine at most 300 times from empty, and not once when it is asked again`, async () => {
    const advisor = createAdvisor(shipped, { places: stations });
    const ask = async (): Promise<void> => {
      const { operations } = await advisor.year({ tree: { species, vigour: 'strong' }, where, from: '2026-01-01' });
      expect(new Set(operations.map(({ op }) => op)).size).toBe(Object.keys(shipped.operations).length);
    };
    const runs = await engineRuns(ask);
    expect(runs).toBeGreaterThan(30);
    expect(runs).toBeLessThanOrEqual(300);
    expect(await engineRuns(ask)).toBe(0);
  });
}

test('the same tree on another day asks the engine at most four times, however many rules look at the season', async () => {
  const advisor = createAdvisor(shipped, { places: stations });
  const on = async (date: string): Promise<unknown> => await advisor.verdict({ tree: { species: 'acer-buergerianum', vigour: 'strong' }, operation: { op: 'repot', rootsRemoved: 0.3, soilRemoved: 'some' }, date, where });
  await on('2026-03-15');
  const runs = await engineRuns(async () => await on('2026-11-15'));
  expect(runs).toBeGreaterThan(0);
  expect(runs).toBeLessThanOrEqual(4);
});

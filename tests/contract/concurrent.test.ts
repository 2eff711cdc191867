import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createAdvisor } from '../../src/advisor.js';
import { plausibleProposal } from '../laws/plausibleProposal.js';
import { shipped, stations } from '../shipped.js';

test('four thousand questions asked at once get the answers that they get one after the other', async () => {
  /* Dated questions look a year ahead and cost most: one in eight. */
  const where = fc.constantFrom(...stations.slice(0, 40)).map((station) => ({ place: station.id }));
  const drawn = fc.sample(plausibleProposal(shipped, stations, { where, told: 5 }), { numRuns: 1_000, seed: 4000 }).map((proposal, i) => {
    if (i % 8 === 0) return proposal;
    const { date: _, ...undated } = proposal;
    return undated;
  });
  const [together, alone] = [createAdvisor(shipped, { places: stations }), createAdvisor(shipped, { places: stations })];
  const atOnce = (await Promise.all([...drawn, ...drawn, ...drawn, ...drawn].map(async (proposal) => await together.assess(proposal)))).map((answer) => JSON.stringify(answer));
  expect(atOnce).toHaveLength(4_000);
  const verdicts = new Set<string>();
  for (const [i, proposal] of drawn.entries()) {
    const answer = await alone.assess(proposal);
    verdicts.add(answer.verdict);
    for (const round of [0, 1, 2, 3]) expect(atOnce[round * drawn.length + i]).toBe(JSON.stringify(answer));
  }
  expect(verdicts.size).toBe(3);
}, 600_000);

test('asking changes neither the question nor the knowledge', async () => {
  const proposal = { tree: { species: 'juniperus-chinensis', log: [{ op: 'root pruning', date: '2025-03' }] }, operation: { op: 'bare-root', rootsRemoved: 0.3 }, meta: { mine: [1] } };
  const before = JSON.stringify(proposal);
  const freeze = (value: unknown): void => {
    if (typeof value !== 'object' || value === null) return;
    Object.freeze(value);
    Object.values(value).forEach(freeze);
  };
  freeze(proposal);
  await createAdvisor(shipped, { places: stations }).assess(proposal);
  expect(JSON.stringify(proposal)).toBe(before);
  expect(() => { (shipped.rules as Record<string, unknown>)['new'] = {}; }).toThrow(TypeError);
});

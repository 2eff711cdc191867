import { describe, expect, it } from 'vitest';
import { corpus } from '../../src/upkeep/corpus.js';
import { survey } from '../../src/upkeep/survey.js';
import { advisor, root, shipped } from '../shipped.js';

const every = corpus(shipped, `${root}tests/corpus.yaml`);
const chosen = Array.from({ length: 3000 }, (_, i) => every[Math.floor((i * every.length) / 3000)]!);

describe('over three thousand proposals of the corpus', () => {
  it('is no larger than it says, and every species, operation and month is in it', () => {
    expect(every.length).toBeLessThanOrEqual(50_000);
    const taxa = Object.values(shipped.species).filter((species) => species.rank === 'taxon').map((species) => species.id);
    expect(new Set(every.map((proposal) => (proposal['tree'] as { species: string }).species))).toEqual(new Set(taxa));
    expect(new Set(every.map((proposal) => (proposal['operation'] as { op: string }).op))).toEqual(new Set(Object.keys(shipped.operations)));
    expect(new Set(every.map((proposal) => String(proposal['date']).slice(5, 7))).size).toBe(12);
  });

  it('most rules fire for certain', async () => {
    const found = await survey(advisor, chosen);
    const fired = Object.values(found.rules).filter((rule) => rule.certainly > 0).length;
    expect(fired / Object.keys(found.rules).length).toBeGreaterThanOrEqual(0.85);
  }, 60_000);

  it('each operation gets at least two verdicts, candle work asked of every tree there is', async () => {
    const candles = every.filter((proposal) => (proposal['operation'] as { op: string }).op === 'candle-cut');
    const { byOperation } = await survey(advisor, [...chosen, ...candles]);
    for (const [operation, verdicts] of Object.entries(byOperation)) expect(Object.values(verdicts).filter((count) => count > 0).length, operation).toBeGreaterThanOrEqual(2);
  }, 60_000);
});

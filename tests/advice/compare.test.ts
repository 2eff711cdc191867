import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { mergePatch } from '../../src/advice/mergePatch.js';
import { cases, patience } from '../laws/cases.js';
import { dateArbitrary, operationArbitrary, plausibleProposal } from '../laws/plausibleProposal.js';
import { advisor, shipped, stations } from '../shipped.js';

const maple = { tree: { species: 'trident maple', stage: 'developing', vigour: 'strong', health: 'sound', trunk: { diameterMm: 60 } }, where: { place: 'koeln-cologne-germany' } };
const late = { ...maple, operation: { op: 'repot', rootsRemoved: 0.3 }, date: '2026-11-15' };
const severity = ['allowed', 'risky', 'advise-against'];

describe('ways side by side', () => {
  test('say which is best, what it gains and is rid of, and that its verdict is what tells', async () => {
    const { variants, best, why } = await advisor.compare(late, [{ date: '2027-03-20' }]);
    expect(variants.map(({ label, verdict }) => `${label}: ${verdict}`)).toEqual(['as asked: advise-against', 'date=2027-03-20: allowed']);
    expect(best).toEqual(['date=2027-03-20']);
    expect(why.id).toBe('compare.verdict');
    expect(variants[1]!.findingsGone).toContain('roots/no-time-to-regrow');
    expect(variants[1]!.findingsAdded).toEqual([]);
  });

  test('that come to the same are said to tie', async () => {
    const { best, why } = await advisor.compare(late, [{ meta: { note: 'nothing changes' } }]);
    expect(best).toHaveLength(2);
    expect(why.id).toBe('compare.tied');
  });

  test('of one verdict are told apart by the findings', async () => {
    const proposal = { ...maple, operation: { op: 'remove-branch', finish: 'concave', branchDiameterMm: 22, branchToTrunk: 0.6, foliageShare: 0.1 }, date: '2026-06-10' };
    const { variants, why } = await advisor.compare(proposal, [{ date: '2026-11-15' }]);
    expect(variants.map(({ verdict }) => verdict)).toEqual(['risky', 'risky']);
    expect(variants.map(({ settled }) => settled)).toEqual([true, true]);
    expect(why.id).toBe('compare.findings');
  });

  test('one of which cannot be answered say so, and answer the rest', async () => {
    const { variants, best } = await advisor.compare(late, [{ operation: { nodesLeft: 2 } }, { date: '2027-03-20' }]);
    expect(variants[1]!.verdict).toBeUndefined();
    expect(variants[1]!.issues!.map(({ code }) => code)).toEqual(['unknown-parameter']);
    expect(best).toEqual(['date=2027-03-20']);
  });

  test('agree with asking each on its own, and none beats the best', async () => {
    const patches = fc.array(fc.oneof(dateArbitrary.map((date) => ({ date })), operationArbitrary(shipped).map((operation) => ({ operation }))), { minLength: 1, maxLength: 3 });
    await fc.assert(fc.asyncProperty(plausibleProposal(shipped, stations), patches, async (proposal, ways) => {
      const { variants, best, why } = await advisor.compare(proposal, ways);
      expect(variants).toHaveLength(ways.length + 1);
      for (const [i, variant] of variants.entries()) {
        if (variant.issues !== undefined) continue;
        const alone = await advisor.verdict(i === 0 ? proposal : mergePatch(proposal, ways[i - 1]));
        expect({ verdict: variant.verdict, range: variant.range, settled: variant.settled }).toEqual({ verdict: alone.verdict, range: alone.range, settled: alone.settled });
      }
      const answered = variants.filter(({ issues }) => issues === undefined);
      const mildest = Math.min(...answered.map(({ verdict }) => severity.indexOf(verdict!)));
      for (const variant of answered.filter(({ label }) => best.includes(label))) expect(severity.indexOf(variant.verdict!)).toBe(mildest);
      if (why.id === 'compare.tied') expect(best).toHaveLength(answered.length);
      if (why.id === 'compare.verdict') expect(answered.some(({ verdict }) => severity.indexOf(verdict!) > mildest)).toBe(true);
    }), { numRuns: cases(60) });
  }, patience(600_000));
});

import { describe, expect, it } from 'vitest';
import { createAdvisor } from '../../src/advisor.js';
import { flatten } from '../../src/knowledge/flatten.js';
import type { Parts } from '../../src/knowledge/parts.js';
import { knownCases } from '../cases/knownCases.js';
import { wrongBy } from '../contract/answerValidator.js';
import { advisor, shippedParts, stations } from '../shipped.js';

/* A pine that is cut back to bare wood: what is kept of it, and what becomes of it as the knowledge changes. */
const question = { tree: { species: 'Pinus sylvestris', vigour: 'weak' }, operation: { op: 'cut-back', foliageLeft: false, woodAge: 'old' }, date: '2026-03-10', where: { place: 'malmo-sweden' } };
const kept = await advisor.assess(question);
const first = kept.findings[0]!;

const later = (change: (rules: Map<string, Parts['rules'] extends ReadonlyMap<string, infer Rule> ? Rule : never>) => Partial<Parts>) => {
  const rules = new Map(shippedParts.rules);
  const changed = change(rules);
  return createAdvisor(flatten({ ...shippedParts, rules, ...changed }), { places: stations });
};

describe('an answer that was kept', () => {
  it('is told to stand where the knowledge is the same, as json brings it back too', async () => {
    for (const { id, proposal } of knownCases.slice(0, 20)) {
      const stored: unknown = JSON.parse(JSON.stringify(await advisor.assess(proposal)));
      const explained = await advisor.explain(stored);
      expect(wrongBy('explained', explained), id).toEqual([]);
      expect(explained.knowledge.same, id).toBe(true);
      expect(explained.verdict.now, id).toBe(explained.verdict.then);
      expect(explained.findings.filter(({ change }) => change !== 'same'), id).toEqual([]);
    }
  });

  it('says which rule was taken away, and the verdict without it', async () => {
    const now = later((rules) => { rules.delete(first.rule); return {}; });
    const explained = await now.explain(kept);
    expect(explained.findings.find(({ rule }) => rule === first.rule)).toMatchObject({ change: 'removed', then: { verdict: first.verdict } });
    expect(explained.knowledge.same).toBe(false);
    expect(explained.verdict).toEqual({ then: kept.verdict, now: (await now.verdict(question)).verdict });
    expect(wrongBy('explained', explained)).toEqual([]);
  });

  it('follows a rule that was renamed, more than once too', async () => {
    const now = later((rules) => {
      rules.set('wound/called-anew', rules.get(first.rule)!);
      rules.delete(first.rule);
      return { renames: [...shippedParts.renames, { from: first.rule, to: 'wound/called-between', since: '0.2.0' }, { from: 'wound/called-between', to: 'wound/called-anew', since: '0.3.0' }] };
    });
    expect((await now.explain(kept)).findings.find(({ rule }) => rule === first.rule)).toMatchObject({ change: 'same', renamedTo: 'wound/called-anew' });
  });

  it('says what is judged milder, what no longer holds and what is new', async () => {
    const milder = later((rules) => { const rule = rules.get(first.rule)!; rules.set(first.rule, { ...rule, verdict: 'risky' }); return {}; });
    expect((await milder.explain(kept)).findings[0]).toMatchObject({ rule: first.rule, change: 'milder', then: { verdict: 'advise-against' }, now: { verdict: 'risky' } });
    const without = later((rules) => { rules.delete(first.rule); return {}; });
    const before = await without.assess(question);
    expect((await advisor.explain(before)).findings.find(({ rule }) => rule === first.rule)).toMatchObject({ change: 'new', now: { verdict: first.verdict } });
    const healthier = { ...kept, proposal: { ...kept.proposal, tree: { species: 'Taxus baccata', vigour: 'strong' } } };
    expect((await advisor.explain(healthier)).findings.map(({ change }) => change)).toContain('gone');
  });

  it('says why it cannot be asked today, and still what became of its rules', async () => {
    const now = later((rules) => { rules.delete(first.rule); return {}; });
    const lost = { ...kept, proposal: { ...kept.proposal, tree: { species: 'Fictaria magna' } } };
    const explained = await now.explain(lost);
    expect(explained.issues?.[0]?.code).toBe('unknown-species');
    expect(explained.verdict).toEqual({ then: kept.verdict });
    expect(explained.findings).toMatchObject([{ rule: first.rule, change: 'removed' }]);
    expect(wrongBy('explained', explained)).toEqual([]);
  });

  it('must be an assessment of a schema that can be read', async () => {
    for (const wrong of [undefined, null, 7, 'text', {}, { ...kept, schema: 'assessment/9' }, { ...kept, findings: undefined }]) {
      await expect(advisor.explain(wrong)).rejects.toMatchObject({ code: 'wrong-type', issues: [{ path: 'schema', accepted: ['assessment/1'] }] });
    }
  });
});

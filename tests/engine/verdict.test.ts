import { expect, test } from 'vitest';
import type { Fired } from '../../src/engine/evaluate.js';
import { judgementOf, severity, worse } from '../../src/engine/verdict.js';
import type { Rule } from '../../src/knowledge/knowledge.js';

const fired = (verdict: Rule['verdict'], fires: Fired['fires'], firm = fires === 'certainly'): Fired<Rule> =>
  ({ residual: { rule: { id: `r/${verdict}`, verdict } as Rule, folded: { kind: 'constant', holds: true }, left: { kind: 'constant', holds: true }, disputed: [] }, fires, firm });

test('nothing that fires is ordinary practice', () => {
  expect(judgementOf([])).toEqual({ verdict: 'allowed', range: ['allowed', 'allowed'], settled: true });
});

test('the worst certain finding decides', () => {
  expect(judgementOf([fired('risky', 'certainly'), fired('advise-against', 'certainly')])).toEqual({ verdict: 'advise-against', range: ['advise-against', 'advise-against'], settled: true });
});

test('what could still be worse raises the verdict to risky, and no further', () => {
  expect(judgementOf([fired('advise-against', 'possibly')])).toEqual({ verdict: 'risky', range: ['allowed', 'advise-against'], settled: false });
  expect(judgementOf([fired('risky', 'possibly')])).toEqual({ verdict: 'risky', range: ['allowed', 'risky'], settled: false });
  expect(judgementOf([fired('risky', 'certainly'), fired('advise-against', 'possibly')])).toEqual({ verdict: 'risky', range: ['risky', 'advise-against'], settled: false });
});

test('a certain advise-against settles everything', () => {
  expect(judgementOf([fired('advise-against', 'certainly'), fired('advise-against', 'possibly'), fired('risky', 'possibly')]).settled).toBe(true);
});

test('an estimate alone is never the ground of a flat advise-against', () => {
  expect(judgementOf([fired('advise-against', 'certainly', false)])).toEqual({ verdict: 'risky', range: ['risky', 'advise-against'], settled: false });
});

test('verdicts rise from allowed over risky to advise-against', () => {
  expect(severity('allowed')).toBeLessThan(severity('risky'));
  expect(severity('risky')).toBeLessThan(severity('advise-against'));
  expect(worse('risky', 'allowed')).toBe('risky');
  expect(worse('risky', 'advise-against')).toBe('advise-against');
});

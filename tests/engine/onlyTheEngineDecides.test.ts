import { afterAll, beforeAll, beforeEach, expect, test, vi } from 'vitest';
import { shipped, stations } from '../shipped.js';

/* json-rules-engine evaluates, and no other code in src/ decides whether a condition holds: with an engine that says always no (or always yes) every verdict follows it. */

const says = { answer: 'real' as 'real' | 'no' | 'yes', runs: 0 };

let createAdvisor: (typeof import('../../src/advisor.js'))['createAdvisor'];
let specialise: (typeof import('../../src/engine/specialise.js'))['specialise'];
let newFolds: (typeof import('../../src/engine/specialise.js'))['newFolds'];

beforeAll(async () => {
  vi.doMock('json-rules-engine', async (original) => {
    const real = await original<typeof import('json-rules-engine')>();
    class Stubbed extends real.Engine {
      readonly names: string[] = [];
      override addRule(rule: never): this {
        this.names.push((rule as { readonly name: string }).name);
        return super.addRule(rule) as this;
      }
      override async run(facts?: Record<string, unknown>): Promise<never> {
        says.runs += 1;
        if (says.answer === 'real') return (await super.run(facts)) as never;
        const results = this.names.map((name) => ({ name, result: says.answer === 'yes', conditions: {} }));
        return (says.answer === 'yes' ? { results, failureResults: [], events: [], failureEvents: [] } : { results: [], failureResults: [], events: [], failureEvents: [] }) as never;
      }
    }
    return { ...real, Engine: Stubbed };
  });
  vi.resetModules();
  ({ createAdvisor } = await import('../../src/advisor.js'));
  ({ specialise, newFolds } = await import('../../src/engine/specialise.js'));
});

afterAll(() => {
  vi.doUnmock('json-rules-engine');
  vi.resetModules();
});

beforeEach(() => {
  says.runs = 0;
});

const proposals = [
  { tree: { species: 'pinus-thunbergii', vigour: 'weak', health: 'ailing' }, operation: { op: 'cut-back', foliageLeft: false, woodAge: 'old' } },
  { tree: { species: 'juniperus-chinensis', vigour: 'weak' }, operation: { op: 'repot', rootsRemoved: 0.9, soilRemoved: 'all' }, date: '2026-07-20', where: { latitude: 51, longitude: 3 } },
  { tree: { species: 'pinus-parviflora' }, operation: { op: 'candle-cut' } },
];

const verdicts = async (): Promise<readonly { readonly verdict: string; readonly rules: readonly string[] }[]> => {
  const advisor = createAdvisor(shipped, { places: stations });
  return await Promise.all(proposals.map(async (proposal) => {
    const { verdict, findings } = await advisor.assess(proposal);
    return { verdict, rules: findings.map((finding) => finding.rule) };
  }));
};

test('with the real engine these proposals are advised against', async () => {
  says.answer = 'real';
  for (const { verdict, rules } of await verdicts()) {
    expect(verdict).toBe('advise-against');
    expect(rules.length).toBeGreaterThan(0);
  }
  expect(says.runs).toBeGreaterThan(0);
});

test('with an engine that finds nothing, nothing is found', async () => {
  says.answer = 'no';
  for (const each of await verdicts()) expect(each).toEqual({ verdict: 'allowed', rules: [] });
  expect(says.runs).toBeGreaterThan(0);
});

test('with an engine that always says yes, rules of other kinds of trees fire as well', async () => {
  says.answer = 'yes';
  const advisor = createAdvisor(shipped, { places: stations });
  const { rules } = await advisor.verdict(proposals[1]);
  const naming = Object.values(shipped.rules).filter((rule) => rule.operations === 'all' || rule.operations.includes('repot'));
  expect(rules.length).toBeGreaterThan(naming.length * 0.8);
  expect(rules.every((rule) => rule.fires === 'certainly')).toBe(true);
});

test('whether a trait of the species meets a rule is asked of the engine too', async () => {
  const conifer = shipped.species['juniperus-chinensis']!.traits;
  const rule = { id: 'r', when: [{ 'species.form.leafHabit': 'evergreen' }] };
  for (const [answer, kept] of [['real', true], ['no', false], ['yes', true]] as const) {
    says.answer = answer;
    expect((await specialise(rule, 'repot', conifer, shipped, newFolds())) !== undefined).toBe(kept);
  }
  says.answer = 'yes';
  expect(await specialise({ id: 'r', when: [{ 'species.form.leafHabit': 'deciduous' }] }, 'repot', conifer, shipped, newFolds())).toBeDefined();
  says.answer = 'real';
  expect(await specialise({ id: 'r', when: [{ 'species.form.leafHabit': 'deciduous' }] }, 'repot', conifer, shipped, newFolds())).toBeUndefined();
});

test('who asks the same at the same time waits for the same run of the engine', async () => {
  says.answer = 'real';
  await createAdvisor(shipped, { places: stations }).verdict(proposals[1]);
  const once = says.runs;
  says.runs = 0;
  const advisor = createAdvisor(shipped, { places: stations });
  await Promise.all(Array.from({ length: 20 }, async () => await advisor.verdict(proposals[1])));
  expect(once).toBeGreaterThan(0);
  expect(says.runs).toBe(once);
});

import { readFileSync } from 'node:fs';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { mergePatch } from '../../../src/advice/mergePatch.js';
import type { Proposal } from '../../../src/contract/types.generated.js';
import { severity } from '../../../src/engine/verdict.js';
import type { PlanQuestion } from '../../../src/knowledge/checkPlan.js';
import { SparebudError } from '../../../src/knowledge/error.js';
import { dayOf, isoOf } from '../../../src/season/day.js';
import { wrongBy } from '../../contract/answerValidator.js';
import { cases } from '../../laws/cases.js';
import { dateArbitrary, operationArbitrary, plausibleProposal } from '../../laws/plausibleProposal.js';
import { advisor, root, shipped, stations } from '../../shipped.js';

const places = fc.constantFrom(...stations.slice(0, 60)).map((station) => ({ place: station.id }));
const steps = fc.array(fc.record({ date: dateArbitrary, operations: fc.array(operationArbitrary(shipped), { minLength: 1, maxLength: 2 }) }), { minLength: 1, maxLength: 3 });
const plans = fc.tuple(plausibleProposal(shipped, stations, { where: places }), steps).map(([{ tree, where }, each]): PlanQuestion => ({ tree, ...(where === undefined ? {} : { where }), steps: each as unknown as PlanQuestion['steps'] }));

const demo = (name: string): PlanQuestion => parse(readFileSync(`${root}docs/demo/${name}.yaml`, 'utf8')) as PlanQuestion;
const maple = { species: 'acer-palmatum', vigour: 'strong', growing: 'bonsai-pot', lastRepotted: '2020-03' } as const;
const where = { place: 'koeln-cologne-germany' };

describe('a plan of any tree', () => {
  test('is answered in the shape that its schema promises, and leaves a tree that can be asked about', async () => {
    await fc.assert(fc.asyncProperty(plans, async (question) => {
      const plan = await advisor.plan(question);
      expect(wrongBy('plan-answer', plan)).toEqual([]);
      const asked = await advisor.verdict({ tree: plan.treeAfter, operation: { op: 'feed' } });
      expect(['allowed', 'risky', 'advise-against']).toContain(asked.verdict);
    }), { numRuns: cases(60) });
  }, 600_000);

  test('is the same whatever the order in which its steps are written', async () => {
    /* Each operation as a step of its own, in any order: steps of one day are one sitting. */
    const shuffled = plans.chain((question) => {
      const single = question.steps.flatMap(({ date, operations }) => operations.map((operation) => ({ date, operations: [operation] })));
      return fc.shuffledSubarray(single, { minLength: single.length }).map((mixed) => ({ question, turned: { ...question, steps: mixed } }));
    });
    await fc.assert(fc.asyncProperty(shuffled, async ({ question, turned }) => {
      expect(JSON.stringify(await advisor.plan(turned))).toBe(JSON.stringify(await advisor.plan(question)));
    }), { numRuns: cases(40) });
  }, 600_000);

  test('of one operation is judged as that operation is', async () => {
    await fc.assert(fc.asyncProperty(plausibleProposal(shipped, stations, { where: places }).filter((proposal) => proposal.date !== undefined), async ({ tree, where: at, operation, date }) => {
      const place = at === undefined ? {} : { where: at };
      const plan = await advisor.plan({ tree, ...place, steps: [{ date, operations: [operation] }] });
      expect(plan.steps[0]!.operations[0]).toEqual(await advisor.assess({ tree, ...place, operation, date }));
    }), { numRuns: cases(60) });
  }, 600_000);

  test('gives each later step the tree that the steps before it leave', async () => {
    await fc.assert(fc.asyncProperty(plans.filter(({ steps: each }) => new Set(each.map(({ date }) => date)).size > 1), async (question) => {
      const plan = await advisor.plan(question);
      const last = plan.steps.at(-1)!;
      const before = await advisor.plan({ ...question, steps: question.steps.filter(({ date }) => date !== last.date) });
      if (last.operations.length > 1) return;
      const [only] = last.operations;
      /* By then it is older too. */
      const { ageYears } = question.tree;
      const older = ageYears === undefined ? {} : { ageYears: ageYears + Math.floor((dayOf(last.date) - dayOf(plan.steps[0]!.date)) / 365.25) };
      const again = await advisor.assess({ tree: { ...before.treeAfter, ...older }, ...(question.where === undefined ? {} : { where: question.where }), operation: (only!.proposal as unknown as Proposal).operation, date: last.date });
      expect(again).toEqual(only);
    }), { numRuns: cases(40) });
  }, 600_000);

  test('offers only changes that are judged as they say, and better, when they are asked', async () => {
    let changed = 0;
    await fc.assert(fc.asyncProperty(plans, async (question) => {
      const plan = await advisor.plan(question);
      for (const change of plan.changes) {
        const again = await advisor.plan(mergePatch(question, change.patch));
        expect(again.verdict, change.why.text).toBe(change.verdict);
        expect(severity(again.verdict)).toBeLessThan(severity(plan.verdict));
        changed += 1;
      }
    }), { numRuns: cases(40) });
    expect(changed).toBeGreaterThan(10);
  }, 600_000);

  test('never asks more at once where its hard jobs stand wider apart', async () => {
    const hard = { op: 'repot', rootsRemoved: 0.4, soilRemoved: 'all' };
    const growth = fc.constantFrom('acer-palmatum', 'pinus-thunbergii', 'ficus-microcarpa', 'olea-europaea', 'juniperus-chinensis');
    await fc.assert(fc.asyncProperty(growth, places, dateArbitrary, fc.integer({ min: 1, max: 400 }), fc.integer({ min: 0, max: 400 }), async (species, at, first, apart, more) => {
      const most = async (days: number): Promise<number> => (await advisor.plan({ tree: { species, vigour: 'strong' }, where: at, steps: [{ date: first, operations: [hard] }, { date: isoOf(dayOf(first) + days), operations: [hard] }] })).strain.most;
      expect(await most(apart + more)).toBeLessThanOrEqual(await most(apart));
    }), { numRuns: cases(60) });
  }, 600_000);

  test('owes more for the same work where it is weaker', async () => {
    await fc.assert(fc.asyncProperty(places, dateArbitrary, fc.integer({ min: 1, max: 400 }), async (at, first, days) => {
      const owed = async (vigour: string): Promise<number> =>
        (await advisor.plan({ tree: { species: 'acer-palmatum', vigour }, where: at, steps: [{ date: first, operations: [{ op: 'trunk-chop' }] }, { date: isoOf(dayOf(first) + days), operations: [{ op: 'feed' }] }] })).steps[1]!.sitting.strain.before;
      const [strong, steady, weak] = [await owed('strong'), await owed('steady'), await owed('weak')];
      expect(strong).toBeLessThanOrEqual(steady);
      expect(steady).toBeLessThanOrEqual(weak);
    }), { numRuns: cases(60) });
  }, 600_000);
});

describe('steps that hang together', () => {
  test('work of one day counts as one sitting, whichever step names it', async () => {
    const cut = (branch: string) => ({ op: 'remove-branch', branch, foliageShare: 0.12, branchDiameterMm: 6 });
    const together = await advisor.plan({ tree: maple, where, steps: [{ date: '2027-02-20', operations: [cut('a')] }, { date: '2027-02-20', operations: [cut('b'), cut('c')] }] });
    expect(together.steps).toHaveLength(1);
    expect(together.steps[0]!.sitting.foliageShare).toBeCloseTo(0.36);
    const apart = await advisor.plan({ tree: maple, where, steps: [{ date: '2027-02-20', operations: [cut('a')] }, { date: '2028-02-20', operations: [cut('b')] }] });
    expect(apart.steps.map(({ sitting }) => sitting.foliageShare)).toEqual([0.12, 0.12]);
  });

  test('a stub that an earlier step left is dry a year later, and not after six weeks', async () => {
    const clean = async (date: string): Promise<string> => {
      const plan = await advisor.plan({ tree: maple, where, steps: [{ date: '2027-02-20', operations: [{ op: 'remove-branch', branch: 'low', finish: 'stub', branchDiameterMm: 9 }] }, { date, operations: [{ op: 'clean-stub', branch: 'low', branchDiameterMm: 9 }] }] });
      return plan.steps[1]!.operations[0]!.verdict;
    };
    expect(await clean('2028-02-25')).toBe('allowed');
    expect(await clean('2027-04-05')).not.toBe('allowed');
  });

  test('a branch that is taken off is gone from the tree, with all that grew on it, and leaves its wound; a stub stays until it is cleaned', async () => {
    const structure = { branches: [{ id: 'low', heightMm: 80, azimuthDeg: 90, diameterMm: 9 }, { id: 'twig', from: 'low', heightMm: 30, diameterMm: 3 }, { id: 'high', heightMm: 140, diameterMm: 6 }] };
    const after = async (...operations: readonly object[]): Promise<Proposal['tree']['structure']> => (await advisor.plan({ tree: { ...maple, structure }, where, steps: operations.map((operation, i) => ({ date: `202${7 + i}-02-20`, operations: [operation] })) })).treeAfter.structure;
    const off = { op: 'remove-branch', branch: 'low' };
    const gone = await after({ ...off, finish: 'concave' });
    expect(gone!.branches!.map(({ id }) => id)).toEqual(['high']);
    expect(gone!.wounds).toEqual([{ heightMm: 80, azimuthDeg: 90, widthMm: expect.closeTo(9 * shipped.growing.woundPerBranch['concave']!) as number }]);
    const stub = await after({ ...off, finish: 'stub' });
    expect(stub!.branches).toContainEqual(expect.objectContaining({ id: 'low', dead: true }));
    expect(stub!.branches!.map(({ id }) => id)).toEqual(['low', 'high']);
    expect(stub!.wounds).toBeUndefined();
    expect((await after({ ...off, finish: 'stub' }, { op: 'clean-stub', branch: 'low' }))!.wounds).toHaveLength(1);
    const jin = await after({ op: 'strip-bark', on: 'branch', branch: 'low' });
    expect(jin!.branches).toContainEqual(expect.objectContaining({ id: 'low', dead: true }));
    expect(await after({ op: 'strip-bark', on: 'trunk', branch: 'low' })).toEqual(structure);
  });

  test('what is left carries all the foliage there is', async () => {
    const branches = [{ id: 'low', heightMm: 80, foliageShare: 0.2 }, { id: 'high', heightMm: 140, foliageShare: 0.3 }, { id: 'back', heightMm: 150 }];
    const plan = await advisor.plan({ tree: { ...maple, structure: { branches } }, where, steps: [{ date: '2027-02-20', operations: [{ op: 'remove-branch', branch: 'low' }] }] });
    expect(plan.treeAfter.structure!.branches).toEqual([{ id: 'high', heightMm: 140, foliageShare: 0.375 }, { id: 'back', heightMm: 150 }]);
  });

  test('a chop takes what stood above it: height, branches and all that grew on them', async () => {
    const structure = {
      trunks: [{ id: 'trunk', points: [{ heightMm: 0, diameterMm: 40 }, { heightMm: 120, diameterMm: 30 }, { heightMm: 400, diameterMm: 8 }] }],
      branches: [{ id: 'low', heightMm: 80, from: 'trunk' }, { id: 'twig', from: 'low', heightMm: 300 }, { id: 'high', heightMm: 200 }, { id: 'tip', from: 'high', heightMm: 90 }],
      wounds: [{ heightMm: 50, widthMm: 6 }, { heightMm: 250, widthMm: 5 }],
    };
    const after = async (heightMm?: number) => (await advisor.plan({ tree: { ...maple, trunk: { diameterMm: 40, heightMm: 400 }, structure }, where, steps: [{ date: '2027-03-01', operations: [{ op: 'trunk-chop', foliageLeft: true, ...(heightMm === undefined ? {} : { heightMm }) }] }] })).treeAfter;
    const low = await after(150);
    expect(low.trunk).toEqual({ diameterMm: 40, heightMm: 150 });
    expect(low.structure!.branches!.map(({ id }) => id)).toEqual(['low', 'twig']);
    expect(low.structure!.trunks![0]!.points.map(({ heightMm }) => heightMm)).toEqual([0, 120]);
    expect(low.structure!.wounds).toEqual([{ heightMm: 50, widthMm: 6 }]);
    expect((await after()).structure).toEqual(structure);
  });

  test('a chop back to the branch that is marked as the leader takes what stood above that, and leaves a second trunk from below as it is', async () => {
    const structure = {
      trunks: [
        { id: 'father', points: [{ heightMm: 0, diameterMm: 40 }, { heightMm: 400, diameterMm: 8 }] },
        { id: 'son', from: 'father', atMm: 30, points: [{ heightMm: 30, diameterMm: 20 }, { heightMm: 260, diameterMm: 5 }] },
        { id: 'fork', from: 'father', atMm: 250, points: [{ heightMm: 250, diameterMm: 9 }, { heightMm: 380, diameterMm: 4 }] },
      ],
      branches: [{ id: 'next', heightMm: 150, role: 'leader' as const }, { id: 'top', heightMm: 300, from: 'father' }, { id: 'on-fork', heightMm: 300, from: 'fork' }, { id: 'on-son', heightMm: 200, from: 'son' }],
    };
    const { treeAfter } = await advisor.plan({ tree: { ...maple, trunk: { diameterMm: 40, heightMm: 400 }, structure }, where, steps: [{ date: '2027-03-01', operations: [{ op: 'trunk-chop', foliageLeft: true }] }] });
    expect(treeAfter.structure!.branches!.map(({ id }) => id)).toEqual(['next', 'on-son']);
    expect(treeAfter.structure!.trunks!.map(({ id, points }) => [id, points.at(-1)!.heightMm])).toEqual([['father', 0], ['son', 260]]);
    expect(treeAfter.trunk!.heightMm).toBe(260);
  });

  test('flowers that were seen on the first day are not taken to be there a year later', async () => {
    const plan = await advisor.plan({ tree: { species: 'malus-halliana', flower: 'open' }, where, steps: [{ date: '2027-04-25', operations: [{ op: 'feed' }] }, { date: '2028-04-25', operations: [{ op: 'feed' }] }] });
    expect(plan.steps.map(({ operations }) => (operations[0]!.proposal as unknown as Proposal).tree.flower)).toEqual(['open', undefined]);
    expect(plan.treeAfter.flower).toBeUndefined();
  });

  test('of two thick branches and a repotting on one day each is told that they are three hard jobs', async () => {
    const thick = (branch: string) => ({ op: 'remove-branch', branch, branchDiameterMm: 28, foliageShare: 0.1 });
    const plan = await advisor.plan({ tree: { ...maple, trunk: { diameterMm: 40 } }, where, steps: [{ date: '2027-03-10', operations: [thick('a'), thick('b'), { op: 'repot', rootsRemoved: 0.4 }] }] });
    for (const { findings } of plan.steps[0]!.operations) expect(findings.map(({ rule }) => rule)).toContain('strain/three-hard-in-one-sitting');
    expect(plan.steps[0]!.sitting.strain).toEqual({ before: 0, asks: 12, sum: 12 });
    expect(plan.because.text).toContain('remove a branch (a)');
    expect(plan.changes.map(({ why }) => why.text)).toContainEqual(expect.stringContaining('remove a branch (a) on'));
  });

  test('a third hard job in one season is risky, in the next season it is not', async () => {
    const hard = (date: string) => ({ date, operations: [{ op: 'wire', bend: 'severe', branchDiameterMm: 4 }] });
    const rules = async (last: string) => (await advisor.plan({ tree: { ...maple, vigour: 'steady' }, where, steps: [hard('2027-05-01'), hard('2027-07-05'), hard(last)] })).steps[2]!.operations[0]!.findings.map(({ rule }) => rule);
    expect(await rules('2027-09-10')).toContain('strain/adds-up');
    expect(await rules('2028-07-05')).not.toContain('strain/adds-up');
  });

  test('what is too close is said once', async () => {
    const hard = (date: string) => ({ date, operations: [{ op: 'wire', bend: 'severe', branchDiameterMm: 4 }] });
    const plan = await advisor.plan({ tree: { ...maple, vigour: 'steady' }, where, steps: [hard('2027-06-01'), hard('2027-06-20')] });
    expect(plan.steps[1]!.operations[0]!.findings.map(({ rule }) => rule).filter((rule) => rule.startsWith('strain/'))).toEqual(['strain/adds-up']);
  });

  test('a plan of more than a hundred operations is answered too', async () => {
    const steps = Array.from({ length: 60 }, (_, i) => ({ date: isoOf(dayOf('2027-01-05') + 30 * i), operations: [{ op: 'feed' }, { op: i === 30 ? 'trunk-chop' : 'unwire' }] }));
    const plan = await advisor.plan({ tree: { species: 'acer-palmatum', vigour: 'weak' }, where, steps });
    expect(plan.verdict).toBe('advise-against');
    expect(plan.steps).toHaveLength(60);
  }, 120_000);

  test('what a step does to pot, roots and place holds from then on', async () => {
    const plan = await advisor.plan({ tree: { ...maple, growing: 'ground', rootState: 'bound' }, where, steps: [{ date: '2027-03-10', operations: [{ op: 'collect', rootsRemoved: 0.3 }] }, { date: '2027-11-20', operations: [{ op: 'overwinter', placement: 'cold-frame' }] }] });
    expect(plan.treeAfter).toMatchObject({ growing: 'deep-container', rootState: 'sound', lastRepotted: '2027-03-10', standing: 'cold-frame' });
    expect(plan.treeAfter.log).toHaveLength(2);
  });

  test('a phase seen on the first day is a sighting afterwards', async () => {
    const plan = await advisor.plan({ tree: { ...maple, phase: 'bud-swell' }, where, steps: [{ date: '2027-03-10', operations: [{ op: 'repot' }] }] });
    expect(plan.treeAfter.phase).toBeUndefined();
    expect(plan.treeAfter.log).toContainEqual({ saw: 'bud-swell', date: '2027-03-10' });
  });
});

describe('a tree that changes from step to step', () => {
  const structure = { trunks: [{ id: 'trunk', points: [{ heightMm: 0, diameterMm: 40 }, { heightMm: 300, diameterMm: 10 }] }], branches: [{ id: 'low', heightMm: 100, diameterMm: 10, azimuthDeg: 90 }, { id: 'twig', from: 'low', heightMm: 100, diameterMm: 4 }, { id: 'high', heightMm: 180, diameterMm: 8, azimuthDeg: 270 }] };
  const plan = async (steps: readonly object[], tree: object = { ...maple, structure }) => await advisor.plan({ tree, where, steps });

  test('is not worked on where a branch has gone, or gone with the branch that bore it', async () => {
    const taken = { date: '2027-06-25', operations: [{ op: 'remove-branch', branch: 'low', finish: 'collar' }] };
    for (const branch of ['low', 'twig']) {
      await expect(plan([taken, { date: '2028-06-25', operations: [{ op: 'wire', branch: 'high' }, { op: 'wire', branch }] }])).rejects.toMatchObject({ code: 'impossible', issues: [{ found: branch, accepted: ['high', 'trunk'] }] });
    }
    expect((await plan([taken, { date: '2026-06-25', operations: [{ op: 'wire', branch: 'low' }] }])).steps).toHaveLength(2);
  });

  test('may still be cleaned of a stub that was left', async () => {
    const stub = { date: '2027-06-25', operations: [{ op: 'remove-branch', branch: 'low', finish: 'stub' }] };
    const clean = { op: 'clean-stub', branch: 'low' };
    expect((await plan([stub, { date: '2028-06-25', operations: [clean] }])).steps).toHaveLength(2);
    await expect(plan([stub, { date: '2028-06-25', operations: [clean] }, { date: '2029-06-25', operations: [clean] }])).rejects.toThrow(SparebudError);
  });

  test('is a year older a year later', async () => {
    const { steps, treeAfter } = await plan([{ date: '2027-03-20', operations: [{ op: 'feed' }] }, { date: '2030-03-21', operations: [{ op: 'feed' }] }], { ...maple, ageYears: 9 });
    expect(steps.map(({ operations }) => (operations[0]!.proposal as unknown as Proposal).tree.ageYears)).toEqual([9, 12]);
    expect(treeAfter.ageYears).toBe(12);
  });
});

describe('the plans of the demo', () => {
  test.each(['plan-pine', 'plan-shrub'])('%s is sensible step by step', async (name) => {
    const plan = await advisor.plan(demo(name));
    expect(plan.verdict).toBe('allowed');
    expect(plan.steps.length).toBeGreaterThanOrEqual(4);
    expect(plan.strain.most).toBeGreaterThan(4);
  });

  test('the shrub repotted in August is advised against, names that step, and is offered the spring', async () => {
    const question = demo('plan-shrub');
    const hasty = { ...question, steps: question.steps.map((step) => (step.date === '2027-03-12' ? { ...step, date: '2026-08-20' } : step)) };
    const plan = await advisor.plan(hasty);
    expect(plan.verdict).toBe('advise-against');
    expect(plan.because.text).toContain('2026-08-20');
    expect(plan.changes[0]).toMatchObject({ verdict: 'allowed' });
    expect(plan.changes.map(({ why, verdict }) => `${verdict} ${why.text}`)).toContainEqual(expect.stringMatching(/^allowed repot on 2027-0[234]/));
  });
});

describe('a plan that cannot be understood', () => {
  const issuesOf = async (question: unknown) => await advisor.plan(question).then(() => [], (cause: unknown) => (cause as SparebudError).issues.map(({ code, path }) => `${code} ${path}`));

  test('says what is wrong in each of its steps at once', async () => {
    expect(await issuesOf({ tree: { species: 'acer' }, steps: [{ date: '2027-02-30', operations: [{ op: 'repot', rootRemoved: 1 }] }, { date: '2027-03-01', operations: [{ op: 'repoting' }] }] }))
      .toEqual(['unknown-parameter steps[0].operations[0].rootRemoved', 'unknown-operation steps[1].operations[0].op', 'bad-date steps[0].date']);
  });

  test('says where a step lacks what it needs', async () => {
    expect(await issuesOf({ tree: { species: 'acer' }, steps: [] })).toEqual(['not-allowed steps']);
    expect(await issuesOf({ tree: { species: 'acer' }, steps: [{ operations: [] }] })).toEqual(expect.arrayContaining(['missing steps[0].date', 'not-allowed steps[0].operations']));
    expect(await issuesOf(null)).toEqual(['wrong-type ']);
    expect(await issuesOf({ tree: { species: 'no such tree' }, steps: [{ date: '2027-03-01', operations: [{ op: 'repot' }] }] })).toEqual(['unknown-species tree.species']);
  });
});

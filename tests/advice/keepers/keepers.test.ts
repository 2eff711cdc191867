import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it } from 'vitest';
import { parse } from 'yaml';
import { createAdvisor } from '../../../src/advisor.js';
import type { Keepers } from '../../../src/advice/keepers/keepers.js';
import { mergePatch } from '../../../src/advice/mergePatch.js';
import type { Proposal } from '../../../src/contract/types.generated.js';
import { SparebudError } from '../../../src/knowledge/error.js';
import type { Knowledge } from '../../../src/knowledge/knowledge.js';
import { wrongBy } from '../../contract/answerValidator.js';
import { advisor, root, shipped, stations } from '../../shipped.js';

interface Question {
  readonly tree: Proposal['tree'];
  readonly where: NonNullable<Proposal['where']>;
  readonly date: string;
}

const demo = (name: string): Question => parse(readFileSync(`${root}docs/demo/keepers-${name}.yaml`, 'utf8')) as Question;
const pine = demo('pine');
const twin = demo('twin');
const changed = (question: Question, patch: Readonly<Record<string, unknown>>): Question => mergePatch(question, patch) as Question;
const branchesOf = ({ tree }: Question): readonly { readonly id: string }[] => tree.structure!.branches!;
const withBranch = (question: Question, id: string, more: Readonly<Record<string, unknown>>): Question =>
  changed(question, { tree: { structure: { branches: branchesOf(question).map((branch) => (branch.id === id ? { ...branch, ...more } : branch)) } } });

let ofPine: Keepers;
let ofTwin: Keepers;
beforeAll(async () => {
  ofPine = await advisor.keepers(pine);
  ofTwin = await advisor.keepers(twin);
}, 60_000);

describe('which branches to keep', () => {
  it('is answered in the shape that its schema promises, every branch of each set kept or taken', () => {
    for (const [question, keepers] of [[pine, ofPine], [twin, ofTwin]] as const) {
      expect(wrongBy('keepers-answer', keepers)).toEqual([]);
      const ids = [...branchesOf(question).map(({ id }) => id), ...question.tree.structure!.trunks!.slice(1).map(({ id }) => id)].sort();
      for (const { keep, remove } of keepers.sets) expect([...keep, ...remove].sort()).toEqual(ids);
    }
  });

  it('leaves one bar-free pair at each of two crowded whorls of a pine, and takes those to the front and on the hollow side', () => {
    const [best] = ofPine.sets;
    expect(best!.remove).toEqual(expect.arrayContaining(['low-front', 'mid-front', 'low-left', 'mid-right']));
    expect(best!.keep.filter((id) => id.startsWith('low-')).length).toBeLessThanOrEqual(2);
    expect(best!.spared.find(({ branch }) => branch === 'low-left')!.parts.map(({ term }) => term)).toEqual(expect.arrayContaining(['bar', 'inside-curve']));
    expect(best!.parts.some(({ term }) => term === 'bar')).toBe(false);
  });

  it('spreads over sittings what one sitting does not bear, each judged as the same plan judges it', async () => {
    const [best] = ofPine.sets;
    expect(best!.stages.length).toBeGreaterThan(1);
    expect(best!.stages.flatMap(({ remove }) => remove).sort()).toEqual([...best!.remove].sort());
    const plan = await advisor.plan({ tree: pine.tree, where: pine.where, steps: best!.stages.map(({ date, remove }) => ({ date, operations: remove.map((branch) => ({ op: 'remove-branch', branch })) })) });
    expect(plan.steps.map(({ date, sitting }) => [date, sitting.verdict, sitting.because])).toEqual(best!.stages.map(({ date, verdict, because }) => [date, verdict, because]));
  }, 60_000);

  it('takes nothing that is advised against in its stages', () => {
    for (const { sets } of [ofPine, ofTwin]) for (const { stages } of sets) for (const { verdict } of stages) expect(verdict).not.toBe('advise-against');
  });

  it('never takes a branch that its owner keeps, and says what that costs', async () => {
    expect(ofTwin.sets.every(({ keep }) => keep.includes('to-front'))).toBe(true);
    const cost = Number(ofTwin.notices.find(({ id }) => id === 'keepers.kept-costs')!.params['cost']);
    const free = await advisor.keepers(withBranch(twin, 'to-front', { role: 'undecided' }));
    expect(free.sets[0]!.remove).toContain('to-front');
    expect(ofTwin.sets[0]!.cost - free.sets[0]!.cost).toBeCloseTo(cost, 2);
  }, 60_000);

  it('keeps both trunks of a twin trunk, and takes what grows between them and what is dead', () => {
    for (const { keep, remove } of ofTwin.sets) {
      expect(keep).toContain('son');
      expect(remove).toEqual(expect.arrayContaining(['inner', 'son-inner', 'stub-dead']));
    }
  });

  it('takes the second trunk with all it bears where a single one is the aim, and its sitting is judged as that cut', async () => {
    const single = await advisor.keepers(changed(twin, { tree: { aim: { style: 'formal-upright' } } }));
    const [best] = single.sets;
    expect(best!.remove).toEqual(expect.arrayContaining(['son', 'son-right', 'son-inner', 'son-front', 'son-back']));
    expect(best!.stages.flatMap(({ remove }) => remove)).toContain('son');
    expect(best!.stages.flatMap(({ remove }) => remove)).not.toContain('son-right');
  }, 60_000);

  it('tells sets as ties only within what shared/aims.yaml calls equal, dearer ones later', () => {
    const costs = ofPine.sets.map(({ cost }) => cost);
    expect(costs).toEqual(costs.toSorted((a, b) => a - b));
    expect(ofPine.ties.map(({ set }) => set)).toEqual(costs.slice(1).map((_, i) => i + 1));
    for (const { dearerBy } of ofPine.ties) expect(dearerBy).toBeLessThanOrEqual(shipped.aims.equal + 0.001);
  });

  it('says the same whatever the order of branches', async () => {
    const turned = changed(pine, { tree: { structure: { branches: branchesOf(pine).toReversed() } } });
    expect(JSON.stringify(await advisor.keepers(turned))).toBe(JSON.stringify(ofPine));
  }, 60_000);

  it('keeps what it cannot weigh, and says so', async () => {
    const { diameterMm: _, ...rest } = branchesOf(pine).find(({ id }) => id === 'low-front') as { readonly id: string; readonly diameterMm?: number };
    const keepers = await advisor.keepers(changed(pine, { tree: { structure: { branches: [...branchesOf(pine).filter(({ id }) => id !== 'low-front'), rest] } } }));
    expect(keepers.sets.every(({ keep }) => keep.includes('low-front'))).toBe(true);
    expect(keepers.notices.find(({ id }) => id === 'keepers.unmeasured')!.params['branch']).toBe('low-front');
  }, 60_000);

  it('is answered without a sitting where every branch may stay', async () => {
    const branches = [{ id: 'left', heightMm: 90, azimuthDeg: 95, diameterMm: 12 }, { id: 'right', heightMm: 150, azimuthDeg: 270, diameterMm: 9 }];
    const keepers = await advisor.keepers({ tree: { species: 'Scots pine', trunk: { diameterMm: 40, heightMm: 400 }, structure: { branches } }, date: '2027-03-01' });
    expect(keepers.sets[0]).toMatchObject({ keep: ['left', 'right'], remove: [], stages: [] });
    expect(wrongBy('keepers-answer', keepers)).toEqual([]);
  });

  it('leaves a sacrifice branch aside while the trunk is to thicken, and takes it once it has', async () => {
    const sacrifice = withBranch(pine, 'low-back', { role: 'sacrifice' });
    const growing = await advisor.keepers(changed(sacrifice, { tree: { aim: { trunkDiameterMm: 90 } } }));
    expect(growing.sets[0]!.keep).toContain('low-back');
    expect(growing.notices.map(({ id }) => id)).toContain('keepers.aside');
    const grown = await advisor.keepers(sacrifice);
    expect(grown.sets[0]!.remove).toContain('low-back');
  }, 60_000);
});

describe('limits', () => {
  it('come from the rules: a weak tree, which needs its leaves, may lose less in each sitting', async () => {
    const share = ({ sets: [best] }: Keepers): number => Math.max(...best!.stages.map(({ remove }) => best!.parts.filter(({ term, branches }) => term === 'foliage' && remove.includes(branches[0]!)).reduce((sum, { cost }) => sum + cost / shipped.aims.terms.foliage.weight, 0)), 0);
    const weak = await advisor.keepers(changed(pine, { tree: { vigour: 'weak' } }));
    expect(share(weak)).toBeLessThanOrEqual(0.11);
    expect(share(ofPine)).toBeGreaterThan(0.15);
    expect(weak.sets[0]!.remove.length).toBeLessThan(ofPine.sets[0]!.remove.length);
  }, 60_000);

  it('follow a rule that is changed: with a tighter limit on girth one of a whorl goes at a time', async () => {
    const rule = shipped.rules['wound/girth-quarter']!;
    const tight: Knowledge = { ...shipped, rules: { ...shipped.rules, [rule.id]: { ...rule, when: [{ 'wound.girthShare': { above: 0.13 } }] } } };
    const keepers = await createAdvisor(tight, { places: stations }).keepers(pine);
    const ofLowWhorl = ({ sets: [best] }: Keepers): number => Math.max(...best!.stages.map(({ remove }) => remove.filter((id) => id.startsWith('low-')).length));
    expect(ofLowWhorl(ofPine)).toBe(2);
    expect(ofLowWhorl(keepers)).toBe(1);
  }, 60_000);

  it('that only a sitting as a whole runs into leave less to take, and still something', async () => {
    const rule = shipped.rules['strain/more-than-it-can-pay']!;
    const tight: Knowledge = { ...shipped, rules: { ...shipped.rules, [rule.id]: { ...rule, when: [{ 'sitting.foliageShare': { above: 0.1 } }, { 'cut.foliageShare': { below: 0.05 } }] } } };
    const { sets: [best], notices } = await createAdvisor(tight, { places: stations }).keepers({ ...pine, years: 1 });
    const { sets: [ofOneYear] } = await advisor.keepers({ ...pine, years: 1 });
    expect(best!.stages.map(({ verdict }) => verdict)).not.toContain('advise-against');
    expect(best!.remove.length).toBeGreaterThan(0);
    expect(best!.remove.length).toBeLessThan(ofOneYear!.remove.length);
    expect(notices.map(({ id }) => id)).toContain('keepers.together');
  }, 60_000);

  it('hold over as many years as are told: in one year less goes', async () => {
    const one = await advisor.keepers({ ...pine, years: 1 });
    expect(one.sets[0]!.stages).toHaveLength(1);
    expect(one.sets[0]!.remove.length).toBeLessThan(ofPine.sets[0]!.remove.length);
  }, 60_000);
});

describe('a question that cannot be answered', () => {
  const codes = async (question: unknown): Promise<readonly string[]> => {
    try {
      await advisor.keepers(question);
    } catch (cause) {
      if (cause instanceof SparebudError) return cause.issues.map(({ code, path }) => `${code} ${path}`);
      throw cause;
    }
    return [];
  };

  it('names what is wrong: no branches, a style that is none, no such day, a branch above the trunk, more than can be weighed', async () => {
    expect(await codes({ tree: { species: 'acer-palmatum' }, date: '2027-01-01' })).toEqual(['missing tree.structure.branches']);
    expect(await codes(changed(pine, { tree: { aim: { style: 'formal' } } }))).toEqual(['not-allowed tree.aim.style']);
    expect(await codes({ ...pine, date: '2027-02-30' })).toEqual(['bad-date date']);
    expect(await codes(withBranch(pine, 'top-left', { heightMm: 700 }))).toHaveLength(1);
    const many = Array.from({ length: 31 }, (_, i) => ({ id: `b${i}`, heightMm: 100 + i * 10, azimuthDeg: i * 40, diameterMm: 3 }));
    expect(await codes(changed(pine, { tree: { structure: { branches: many } } }))).toEqual(['too-large tree.structure.branches']);
  });
});

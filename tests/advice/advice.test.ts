import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Assessment, Proposal } from '../../src/contract/types.generated.js';
import { mergePatch } from '../../src/advice/mergePatch.js';
import { strengthOf } from '../../src/advice/findings.js';
import { severity } from '../../src/engine/verdict.js';
import { dayOf, isoOf } from '../../src/season/day.js';
import type { SourceWord, Verdict } from '../../src/knowledge/knowledge.js';
import { knownCases } from '../cases/knownCases.js';
import { cases, patience } from '../laws/cases.js';
import { onAnotherDay } from '../laws/onAnotherDay.js';
import { judgeWith } from '../laws/judged.js';
import { plausibleProposal } from '../laws/plausibleProposal.js';
import { advisor, shipped, stations } from '../shipped.js';

/* Law 3: a stated change is true, and so is every other verdict that an assessment states: asking again gives it. */

const judge = judgeWith(shipped, stations);
const places = fc.constantFrom(...stations.slice(0, 60)).map((station) => ({ place: station.id }));
const proposals = plausibleProposal(shipped, stations, { where: places });

const set = (proposal: Proposal, path: string, value: unknown): Proposal => {
  const [under, ...steps] = path.split('.');
  const put = (at: unknown, left: readonly string[]): unknown => (left.length === 0 ? value : { ...(at as object | undefined), [left[0]!]: put((at as Readonly<Record<string, unknown>> | undefined)?.[left[0]!], left.slice(1)) });
  return { ...proposal, [under!]: put(proposal[under as keyof Proposal], steps) } as Proposal;
};

const tellable = (fact: string): string | undefined => {
  const given = shipped.facts[fact]?.given;
  return given === undefined || ['where', 'date', 'tree.log', 'tree.lastRepotted', 'tree.structure', 'where.region'].includes(given) ? undefined : given;
};

type Answer = Assessment['questions'][number]['answers'][number];

/** A value that an answer speaks of: its own, or one of its stretch of numbers. */
const valueOf = (fact: string, { value, atLeast, below }: Answer): unknown => {
  if (value !== undefined) return value;
  const { tries, bounds } = shipped.facts[fact]!;
  return tries?.find((each) => each >= (atLeast ?? -Infinity) && each < (below ?? Infinity)) ?? atLeast ?? bounds?.[0];
};

/** What each check met, so that none passes for want of anything to look at. */
const met = new Map<string, number>();
const meet = (what: string): void => { met.set(what, (met.get(what) ?? 0) + 1); };

type Check = (proposal: Proposal, assessment: Assessment) => Promise<void> | void;

/** What holds of every answer, and what asking again shows of all that it states. */
const checks: Readonly<Record<string, Check>> = {
  'no more than five questions are asked, none where all is settled, and none twice': (_, { settled, questions }) => {
    if (settled) expect(questions).toEqual([]);
    expect(questions.length).toBeLessThanOrEqual(5);
    expect(new Set(questions.map((question) => question.fact)).size).toBe(questions.length);
    for (const question of questions) {
      expect(question.ask.text).toMatch(/\?/);
      meet('questions');
    }
  },
  'each answer to a question brings the verdict that it says': async (proposal, { questions }) => {
    for (const { fact, answers } of questions) {
      const given = tellable(fact);
      if (given === undefined) continue;
      for (const answer of answers) {
        expect((await judge(set(proposal, given, valueOf(fact, answer)))).verdict, `${fact} ${JSON.stringify(answer)}`).toBe(answer.verdict);
        meet('answers');
      }
    }
  },
  'what an assumption would bring otherwise is what it brings when it is told': async (proposal, { assumed }) => {
    for (const { fact, value, otherwise } of assumed) {
      const given = tellable(fact);
      if (given === undefined || value === null) continue;
      for (const answer of otherwise) {
        const other = valueOf(fact, answer);
        expect(other).not.toBe(value);
        expect((await judge(set(proposal, given, other))).verdict, `${fact} ${JSON.stringify(answer)}`).toBe(answer.verdict);
        meet('otherwise');
      }
    }
  },
  'an alternative is better than what was asked, and stays so when it is asked itself; prunings are judged as they say': async (proposal, { verdict, alternatives, prunings }) => {
    expect(alternatives.length).toBeLessThanOrEqual(3);
    for (const each of alternatives) {
      expect(severity(each.verdict as Verdict)).toBeLessThan(severity(verdict as Verdict));
      expect((await judge({ ...proposal, operation: each.operation })).verdict).toBe(each.verdict);
      meet('alternatives');
    }
    for (const each of prunings) expect((await judge({ ...proposal, operation: each.operation })).verdict).toBe(each.verdict);
  },
  'a stated change gives the stated verdict, which is better': async (proposal, { verdict, changes }) => {
    for (const { patch, verdict: stated } of changes as readonly { readonly patch: object; readonly verdict: Verdict }[]) {
      expect(severity(stated)).toBeLessThan(severity(verdict as Verdict));
      expect((await judge(mergePatch(proposal, patch))).verdict, JSON.stringify(patch)).toBe(stated);
      meet('changes');
    }
  },
  'a window holds the stated verdict on its first day, in its middle and on its last': async (proposal, { windows }) => {
    for (const { from, to, verdict } of windows) {
      for (const day of [from, isoOf(Math.floor((dayOf(from) + dayOf(to)) / 2)), to]) expect((await judge(onAnotherDay(proposal, day))).verdict, `${from} to ${to} on ${day}`).toBe(verdict);
      meet('windows');
    }
  },
  'findings stand worst first, each names its facts and a source, and its words are filled in': (_, { findings, summary }) => {
    const order = findings.map((finding) => [finding.fires === 'certainly' ? 0 : 1, -severity(finding.verdict)] as const);
    expect(order).toEqual([...order].sort(([a, b], [c, d]) => a - c || b - d));
    for (const finding of findings) {
      expect(finding.sources.length, finding.rule).toBeGreaterThan(0);
      expect(finding.title.text + finding.because.text, finding.rule).not.toMatch(/[{}]|undefined|NaN|\[object/);
      meet('findings');
    }
    expect(summary.text).not.toMatch(/[{}]|undefined|NaN/);
    expect(summary.text).not.toBe('');
  },
  'what is to be done after has dates in order where the day is known, and names an operation that there is': (proposal, { after }) => {
    for (const each of after) {
      expect(each.do.text).not.toMatch(/[{}]/);
      expect(each.from === undefined).toBe(proposal.date === undefined);
      if (each.from !== undefined) {
        expect(each.from >= proposal.date!).toBe(true);
        expect(each.to! >= each.from).toBe(true);
      }
      if (each.operation !== undefined) expect(shipped.operations[each.operation.op]).toBeDefined();
      meet('after');
    }
  },
};

const holds = async (proposal: Proposal): Promise<void> => {
  const assessment = await advisor.assess(proposal);
  for (const [says, check] of Object.entries(checks)) {
    try {
      await check(proposal, assessment);
    } catch (cause) {
      throw new Error(`${says}: ${(cause as Error).message}`, { cause });
    }
  }
};

describe('whatever is asked', () => {
  test('of any tree: all that the answer states holds when it is asked again', async () => {
    await fc.assert(fc.asyncProperty(proposals, holds), { numRuns: cases(2000) });
    for (const what of ['questions', 'answers', 'otherwise', 'alternatives', 'changes', 'windows', 'findings', 'after']) expect(met.get(what) ?? 0, what).toBeGreaterThan(100);
  }, patience(900_000));

  test('in the known cases: all that the answer states holds when it is asked again', async () => {
    for (const { id, proposal } of knownCases) await holds(proposal).catch((cause: unknown) => { throw new Error(`${id}: ${(cause as Error).message}`, { cause }); });
  }, patience(300_000));
});

describe('what follows work', () => {
  const after = async (operation: Readonly<Record<string, unknown>>, species = 'acer-palmatum', date = '2026-03-20'): Promise<readonly string[]> =>
    (await advisor.assess({ tree: { species }, operation, date, where: { latitude: 51, longitude: 3.7 } })).after.map((each) => `${each.do.id} ${each.from}`);

  test('a stub is to be cleaned', async () => {
    expect(await after({ op: 'remove-branch', finish: 'stub' })).toContain('after.clean-the-stub 2026-09-16');
    expect((await after({ op: 'remove-branch', finish: 'collar' })).join()).not.toMatch(/clean-the-stub/);
  });

  test('wire is to be looked at a fortnight later, counted in growth: it marks as the wood swells', async () => {
    expect(await after({ op: 'wire', bend: 'gentle' }, 'acer-palmatum', '2026-06-01')).toContain('after.check-the-wire 2026-06-15');
    const [early] = (await after({ op: 'wire', bend: 'gentle' })).filter((each) => each.startsWith('after.check-the-wire'));
    expect(early! > 'after.check-the-wire 2026-04-10' && early! < 'after.check-the-wire 2026-05-15').toBe(true);
    expect((await after({ op: 'wire', bend: 'gentle' }, 'acer-palmatum', '2026-01-10')).filter((each) => each.startsWith('after.check-the-wire'))).toEqual([early]);
  });

  test('cut roots are fed again three weeks into growth, and not in the winter after an autumn repotting', async () => {
    expect(await after({ op: 'repot' }, 'ficus-microcarpa', '2026-06-01').then((each) => each.join())).toMatch(/feed-again 2026-(06|07)/);
    expect((await after({ op: 'repot' }, 'acer-palmatum', '2026-11-20')).join()).toMatch(/feed-again 2027-0[45]/);
  });

  test('new shoots are chosen among once they grow, whenever the wood was cut', async () => {
    for (const [operation, species] of [[{ op: 'trunk-chop', foliageLeft: false }, 'quercus-robur'], [{ op: 'cut-back', foliageLeft: false, budsLeft: 0, woodAge: 'old' }, 'ulmus-parvifolia']] as const) {
      const at = async (date: string): Promise<readonly string[]> => (await after(operation, species, date)).filter((each) => /choose-new-leader|thin-the-regrowth/.test(each));
      const [leader, ...others] = await at('2026-12-20');
      expect(leader).toMatch(/ 2027-0[56]-/);
      expect(others).toEqual([]);
      expect(await at('2027-02-20')).toEqual([leader]);
    }
  });

  test('cut roots are sheltered from the very day', async () => {
    expect(await after({ op: 'repot' })).toContain('after.shelter-after-roots 2026-03-20');
  });

  test('cut roots of a succulent are kept dry, those of a maple are not', async () => {
    expect((await after({ op: 'repot' }, 'adenium-obesum')).join()).toMatch(/keep-roots-dry/);
    expect((await after({ op: 'repot' })).join()).not.toMatch(/keep-roots-dry/);
  });
});

describe('what is taken for granted', () => {
  test('of the region is said where alerts of some region would change the verdict', async () => {
    const told = async (where?: object) => await advisor.assess({ tree: { species: 'pinus-pinea' }, operation: { op: 'clean-stub', branchDiameterMm: 3 }, date: '2024-02-01', ...(where === undefined ? {} : { where }) });
    const { verdict, assumed } = await told();
    expect(verdict).toBe('allowed');
    expect(assumed.find(({ fact }) => fact === 'place.region')?.otherwise).toEqual([{ value: 'US-CA', verdict: 'risky', range: ['risky', 'risky'] }]);
    expect((await told({ region: 'US-CA' })).verdict).toBe('risky');
    expect((await told({ region: 'GB' })).assumed.map(({ fact }) => fact)).not.toContain('place.region');
  });
});

describe('what to expect', () => {
  test('wire marks sooner on a tree that thickens faster, and as its kind usually does where that is not told', async () => {
    const weeks = async (trunk?: object): Promise<readonly number[] | undefined> => (await advisor.assess({ tree: { species: 'acer-palmatum', ...(trunk === undefined ? {} : { trunk }) }, operation: { op: 'wire', bend: 'gentle' }, date: '2026-06-01', where: { place: 'koeln-cologne-germany' } })).expect.wireMarksWeeks;
    const [usual, slow, fast] = [await weeks(), await weeks({ diameterMm: 40, thickenedMm: 1 }), await weeks({ diameterMm: 40, thickenedMm: 4 })];
    expect(usual![1]).toBe(shipped.species['acer-palmatum']!.traits['wood.markingWeeks']!.is);
    expect(slow![0]).toBeGreaterThan(fast![1]!);
    for (const [least, most] of [usual!, slow!, fast!] as [number, number][]) expect(most / least).toBeCloseTo(1.7, 0);
  });

  const expected = async (operation: Readonly<Record<string, unknown>>, tree: Readonly<Record<string, unknown>> = {}): Promise<Assessment['expect']> => (await advisor.assess({ tree: { species: 'acer-palmatum', ...tree }, operation })).expect;

  test('a chop leaves a wound as wide as the trunk where it is cut, the longer open the lower it is made', async () => {
    const trunk = { diameterMm: 50, heightMm: 600 };
    const structure = { trunks: [{ id: 'trunk', points: [{ heightMm: 0, diameterMm: 50 }, { heightMm: 600, diameterMm: 10 }] }] };
    const years = async (heightMm: number): Promise<readonly number[]> => (await expected({ op: 'trunk-chop', heightMm }, { trunk, structure })).closureYears!;
    const [low, high] = [await years(60), await years(450)];
    expect(low[0]! / high[0]!).toBeCloseTo(46 / 20, 0);
    expect(low[1]!).toBeGreaterThan(high[1]!);
  });

  test('a wider wound or a weaker tree takes longer at both ends', async () => {
    const years = async (branchDiameterMm: number, vigour: string): Promise<readonly number[]> => (await expected({ op: 'remove-branch', branchDiameterMm }, { vigour })).closureYears!;
    for (const [sooner, later] of [[await years(10, 'steady'), await years(20, 'steady')], [await years(20, 'strong'), await years(20, 'weak')]] as const) {
      expect(later[0]!).toBeGreaterThan(sooner[0]!);
      expect(later[1]!).toBeGreaterThan(sooner[1]!);
      expect(sooner[1]!).toBeGreaterThanOrEqual(sooner[0]!);
    }
  });

  test('hard work takes longer to get over than light work', async () => {
    const weeks = async (rootsRemoved: number): Promise<number> => (await expected({ op: 'repot', rootsRemoved, soilRemoved: 'some' })).recoveryWeeks![1]!;
    expect(await weeks(0.5)).toBeGreaterThan(await weeks(0.1));
  });

  test('shoots are sure from foliage, and not to be expected from the bare wood of a pine', async () => {
    expect((await expected({ op: 'cut-back', foliageLeft: true })).backBudding).toBe('sure');
    expect((await advisor.assess({ tree: { species: 'pinus-thunbergii' }, operation: { op: 'cut-back', foliageLeft: false, woodAge: 'old' } })).expect.backBudding).toBe('none');
  });

  test('work that leaves no wound says nothing of closing', async () => {
    expect((await expected({ op: 'feed' })).closureYears).toBeUndefined();
  });
});

describe('strength follows evidence', () => {
  const source = (from: SourceWord['from'], grade: SourceWord['grade'], studied: string): SourceWord => ({ id: 'x', title: 'An invented source', from, grade, studied });

  test('measured and published on trees in pots is strong', () => {
    expect(strengthOf([source('read', 'journal', 'container')])).toBe('strong');
  });

  test('measured in another setting is one step lower', () => {
    for (const studied of ['forest', 'landscape', 'nursery', 'orchard']) expect(strengthOf([source('read', 'journal', studied)])).toBe('fair');
  });

  test('several handbooks that agree are fair, one alone is weak', () => {
    const handbook = source('read', 'extension', 'container');
    expect(strengthOf([handbook, handbook])).toBe('fair');
    expect(strengthOf([handbook])).toBe('weak');
  });

  test('practice, and what is recalled, is weak', () => {
    expect(strengthOf([source('practice', 'practice', 'practice')])).toBe('weak');
    expect(strengthOf([source('memory', 'journal', 'container')])).toBe('weak');
    expect(strengthOf([])).toBe('weak');
  });
});

describe('sources that disagree', () => {
  const disputed = Object.values(shipped.species).flatMap((species) => Object.entries(species.traits).filter(([, trait]) => trait.either !== undefined).map(([name]) => ({ species: species.id, name })));

  test('are told of in the finding, and nobody is asked', async () => {
    expect(disputed.length).toBeGreaterThan(0);
    let said = 0;
    for (const { species, name } of disputed.slice(0, 40)) {
      for (const op of Object.keys(shipped.operations)) {
        const { rules } = await advisor.verdict({ tree: { species }, operation: { op } });
        if (rules.length === 0) continue;
        const { findings, questions } = await advisor.assess({ tree: { species }, operation: { op } });
        expect(questions.map((question) => question.fact as string)).not.toContain(`species.${name}`);
        said += findings.filter((finding) => (finding.disputed as readonly string[] | undefined)?.includes(`species.${name}`) === true).length;
        if (said > 3) return;
      }
    }
    expect(said).toBeGreaterThan(0);
  }, patience(120_000));
});

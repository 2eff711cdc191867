import { alternativesOf, type JudgeOther } from './advice/alternatives.js';
import { assumptionsOf } from './advice/assumptions.js';
import { basisOf } from './advice/basis.js';
import { cautionsOf } from './advice/cautions.js';
import { changesOf } from './advice/changes.js';
import type { Comparison } from './advice/compare.js';
import type { Due } from './advice/due/due.js';
import { expectationsOf } from './advice/expectations.js';
import type { Explained } from './advice/explain.js';
import { findingsOf } from './advice/findings.js';
import { followUpsOf } from './advice/followUps.js';
import type { Keepers } from './advice/keepers/keepers.js';
import { noticesOf } from './advice/notices.js';
import type { Plan } from './advice/plan/plan.js';
import { pruningsOf } from './advice/prunings.js';
import { questionsOf } from './advice/questions.js';
import { readyFor } from './advice/ready.js';
import { summaryOf } from './advice/summary.js';
import { windowsOf } from './advice/windows.js';
import type { Year, yearOf } from './advice/year.js';
import type { Assessment, Proposal } from './contract/types.generated.js';
import type { Judgement } from './engine/verdict.js';
import { SparebudError } from './knowledge/error.js';
import { findSpecies, type Found } from './knowledge/findSpecies.js';
import { inWording } from './knowledge/inWording.js';
import type { Knowledge, Verdict } from './knowledge/knowledge.js';
import { type OperationForm, operationForms } from './knowledge/operationForms.js';
import type { Station } from './season/station.js';

export interface AdvisorOptions {
  /** Bundled stations, from `sparebud/places`; without them a place is known by its own normals, frost dates or latitude. */
  readonly places?: readonly Station[];
  /** Texts by id, in place of the English ones: `sparebud/wording/de`, or an app's own; what it lacks stays English. Errors are English, for they are told to developers. */
  readonly wording?: Readonly<Record<string, string>>;
}

/** The verdict alone, with the rules that fired. */
export interface VerdictOnly extends Judgement {
  readonly rules: readonly { readonly rule: string; readonly verdict: Verdict; readonly fires: 'certainly' | 'possibly' }[];
}

/** What a year is asked of. */
export type YearQuestion = Parameters<typeof yearOf>[1];

/** Answers questions about trees from one body of knowledge. */
export interface Advisor {
  /** What it answers from, in the words that it answers in. */
  readonly knowledge: Knowledge;
  /**
   * The answer to a proposal: verdict, reasons, what was assumed, what would settle it.
   *
   * Use it before the tool touches the tree.
   * @param proposal at least `{ tree: { species }, operation: { op } }`; anything else sharpens the answer
   * @throws SparebudError with every issue at once where the proposal cannot be understood
   */
  readonly assess: (proposal: unknown) => Promise<Assessment>;
  /**
   * The verdict of a proposal and the rules it rests on, without advice.
   *
   * Use it for many proposals at once: it costs a fraction of `assess`, and says the same verdict.
   * @throws SparebudError as `assess` does
   */
  readonly verdict: (proposal: unknown) => Promise<VerdictOnly>;
  /**
   * Ways to do it side by side: each a JSON Merge Patch (RFC 7396) of the proposal.
   *
   * Use it to see what waiting, another finish or a smaller share would bring.
   * @throws SparebudError where the proposal itself cannot be understood; a patch that cannot says so in its variant
   */
  readonly compare: (proposal: unknown, patches: readonly Readonly<Record<string, unknown>>[]) => Promise<Comparison>;
  /**
   * What has changed since an answer was kept: the verdict today, and of each rule whether it was renamed, removed or judged otherwise.
   *
   * Use it when an assessment that was stored is shown again after an update of the knowledge.
   * @param kept an assessment as `assess` returned it, also by an earlier version
   * @throws SparebudError where it is no assessment; a question that cannot be asked any more stands under `issues`
   */
  readonly explain: (kept: unknown) => Promise<Explained>;
  /**
   * Work on one tree in steps: each operation on the tree as earlier steps left it, each sitting as a whole, and the strain that adds up.
   *
   * Use it to see in which order, and over how many seasons, work may be done.
   * @param question `{ tree, where, steps: [{ date, operations: [] }] }`; a phase that is told counts as seen on the first day
   * @throws SparebudError with the issues of every step at once
   */
  readonly plan: (question: unknown) => Promise<Plan>;
  /**
   * A year of one tree at one place: phases, frost, day length, and each operation's verdict day by day.
   *
   * Use it to plan a season, or to draw it with `yearPicture` of `sparebud/picture`.
   * @param question the tree, the place, the day to begin with (ISO 8601), and the operations if not each in its usual way
   * @throws SparebudError as `assess` does
   */
  readonly year: (question: YearQuestion) => Promise<Year>;
  /**
   * What is due in a collection: what follows work that was done, and what comes round, each in a window in which it may be done.
   *
   * Use it for a list of the week, or a calendar of the season.
   * @param collection `{ where, trees: [{ id, tree, where }] }`
   * @param date ISO 8601
   * @param soonDays how many days ahead counts as soon; 30 if not told
   * @throws SparebudError where the collection or date cannot be understood; a tree that cannot stands under `unanswered`
   */
  readonly due: (collection: unknown, date: string, soonDays?: number) => Promise<Due>;
  /**
   * Which branches to keep for an aim, which go, and in which sittings: the best sets first, with what each is charged for.
   *
   * Use it to choose among branches at one level, to find the leader, or to see what keeping a branch costs.
   * @param question `{ tree, where, date, years }`; the tree with its `structure` (mm, degrees), the style in `tree.aim.style`
   * @throws SparebudError where the structure cannot be, or holds more than 30 branches to choose from
   * @example const { sets } = await advisor.keepers({ tree: { species: 'trident maple', aim: { style: 'informal-upright' }, structure }, date: '2027-03-01' });
   */
  readonly keepers: (question: unknown) => Promise<Keepers>;
  /** Every operation with its parameters, their types, units, choices and bounds, and what is taken where nothing is told; plain, for a form. */
  readonly operations: () => readonly OperationForm[];
  /** The species that a name means; plain, for a field that is typed into. */
  readonly findSpecies: (name: string) => Found;
}

const advisorOver = (knowledge: Knowledge, places: readonly Station[]): Advisor => {
  const ready = readyFor(knowledge, places);

  const judgeOtherOf = (proposal: Proposal): JudgeOther => async (operation) => {
    try {
      const { judge } = await ready({ ...proposal, operation });
      return await judge();
    } catch (cause) {
      if (cause instanceof SparebudError) return undefined;
      throw cause;
    }
  };

  const assess = async (written: unknown): Promise<Assessment> => {
    const { proposal, prepared, residuals, judge } = await ready(written);
    const { rules, cautions, followUps } = residuals;
    const { asked, species } = prepared;
    const own = await judge();
    const findings = findingsOf(own, knowledge, species);
    const judgeOther = judgeOtherOf(proposal);
    const windows = await windowsOf(own, judge, prepared);
    return {
      schema: 'assessment/1',
      ...(proposal.id === undefined ? {} : { id: proposal.id }),
      proposal: proposal as unknown as Assessment['proposal'],
      verdict: own.verdict,
      range: [...own.range],
      settled: own.settled,
      summary: summaryOf(own, [...findings], knowledge),
      findings: [...findings],
      assumed: [...(await assumptionsOf(own, judge, rules, asked))],
      questions: [...(await questionsOf(own, judge, asked))] as Assessment['questions'],
      changes: [...(await changesOf(own, judge, asked, [...windows], judgeOther))],
      windows: [...windows],
      alternatives: [...(await alternativesOf(own, proposal, knowledge, judgeOther))],
      expect: expectationsOf(asked, own.facts.read),
      after: [...(await followUpsOf(followUps, prepared, own.facts.read))],
      prunings: [...(await pruningsOf(proposal, knowledge, judgeOther))],
      cautions: await cautionsOf(cautions, own.facts.read, knowledge),
      notices: [...noticesOf(prepared, own, rules)],
      basis: basisOf(prepared, own, rules),
      ...(proposal.meta === undefined ? {} : { meta: proposal.meta }),
    };
  };

  const verdict = async (written: unknown): Promise<VerdictOnly> => {
    const own = await (await ready(written)).judge();
    return { verdict: own.verdict, range: own.range, settled: own.settled, rules: own.fired.map(({ residual, fires }) => ({ rule: residual.rule.id, verdict: residual.rule.verdict, fires })) };
  };

  /* What only one question needs is loaded when it is first asked. */
  return {
    knowledge,
    assess,
    verdict,
    compare: async (proposal, patches) => await (await import('./advice/compare.js')).compareWith(assess, knowledge, proposal, patches),
    explain: async (kept) => await (await import('./advice/explain.js')).explain(assess, knowledge, kept),
    plan: async (question) => await (await import('./advice/plan/plan.js')).planOf(ready, assess, knowledge, question),
    year: async (question) => await (await import('./advice/year.js')).yearOf(ready, question),
    due: async (collection, date, soonDays) => await (await import('./advice/due/due.js')).dueOf(ready, knowledge, collection, date, soonDays),
    keepers: async (question) => await (await import('./advice/keepers/keepers.js')).keepersFor(ready, knowledge, question),
    operations: () => operationForms(knowledge),
    findSpecies: (name) => findSpecies(knowledge, name),
  };
};

/**
 * An advisor over some knowledge.
 *
 * Use it once, and keep it: it remembers what it has worked out of each species and place.
 * @param knowledge from `sparebud/knowledge`, or read from a folder by `sparebud/node`
 * @example
 * const advisor = createAdvisor(knowledge, { places });
 * const answer = await advisor.assess({ tree: { species: 'trident maple' }, operation: { op: 'repot', rootsRemoved: 0.3 } });
 */
export const createAdvisor = (knowledge: Knowledge, { places = [], wording }: AdvisorOptions = {}): Advisor =>
  advisorOver(wording === undefined ? knowledge : inWording(knowledge, wording), places);

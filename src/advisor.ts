import { alternativesOf, type JudgeOther } from './advice/alternatives.js';
import { assumptionsOf } from './advice/assumptions.js';
import { basisOf } from './advice/basis.js';
import { cautionsOf } from './advice/cautions.js';
import { expectationsOf } from './advice/expectations.js';
import { findingsOf } from './advice/findings.js';
import { followUpsOf } from './advice/followUps.js';
import { judgeOf } from './advice/judge.js';
import { noticesOf } from './advice/notices.js';
import { type Places, prepare } from './advice/prepare.js';
import { pruningsOf } from './advice/prunings.js';
import { questionsOf } from './advice/questions.js';
import { summaryOf } from './advice/summary.js';
import type { Assessment, Proposal } from './contract/types.generated.js';
import { residualsOf } from './engine/residuals.js';
import { checkProposal } from './knowledge/checkProposal.js';
import { SparebudError } from './knowledge/error.js';
import { findSpecies, type Found } from './knowledge/findSpecies.js';
import type { Knowledge } from './knowledge/knowledge.js';
import type { Station } from './season/station.js';

export interface AdvisorOptions {
  /** Bundled stations, from `sparebud/places`; without them a place is known by its own normals, frost dates or latitude. */
  readonly places?: readonly Station[];
}

/** Answers questions about trees from one body of knowledge. */
export interface Advisor {
  readonly knowledge: Knowledge;
  /**
   * The answer to a proposal: verdict, reasons, what was assumed, what would settle it.
   *
   * Use it before the tool touches the tree.
   * @param proposal at least `{ tree: { species }, operation: { op } }`; anything else sharpens the answer
   * @throws SparebudError with every issue at once where the proposal cannot be understood
   */
  readonly assess: (proposal: unknown) => Promise<Assessment>;
  /** The species that a name means; plain, for a field that is typed into. */
  readonly findSpecies: (name: string) => Found;
}

/**
 * An advisor over some knowledge.
 *
 * Use it once, and keep it: it remembers what it has worked out of each species and place.
 * @param knowledge from `sparebud/knowledge`, or read from a folder by `sparebud/node`
 * @example
 * const advisor = createAdvisor(knowledge, { places });
 * const answer = await advisor.assess({ tree: { species: 'trident maple' }, operation: { op: 'repot', rootsRemoved: 0.3 } });
 */
export const createAdvisor = (knowledge: Knowledge, options: AdvisorOptions = {}): Advisor => {
  const residuals = residualsOf(knowledge);
  const places: Places = { stations: options.places ?? [], climates: new Map() };

  const judgeOtherOf = (proposal: Proposal): JudgeOther => async (operation) => {
    try {
      const other = checkProposal({ ...proposal, operation }, knowledge);
      const prepared = prepare(other, knowledge, places);
      const { rules } = await residuals(other.operation.op, prepared.variant, prepared.asked.traits);
      return await judgeOf(prepared, rules, proposal.ignore)();
    } catch (cause) {
      if (cause instanceof SparebudError) return undefined;
      throw cause;
    }
  };

  const assess = async (written: unknown): Promise<Assessment> => {
    const proposal = checkProposal(written, knowledge);
    const prepared = prepare(proposal, knowledge, places);
    const { asked, species, variant } = prepared;
    const { rules, cautions, followUps } = await residuals(proposal.operation.op, variant, asked.traits);
    const judge = judgeOf(prepared, rules, proposal.ignore);
    const judged = await judge();
    const findings = findingsOf(judged, knowledge, species);
    const judgeOther = judgeOtherOf(proposal);
    return {
      schema: 'assessment/1',
      ...(proposal.id === undefined ? {} : { id: proposal.id }),
      proposal: proposal as unknown as Assessment['proposal'],
      verdict: judged.verdict,
      range: [...judged.range],
      settled: judged.settled,
      summary: summaryOf(judged, [...findings], knowledge),
      findings: [...findings],
      assumed: [...(await assumptionsOf(judged, judge, rules, knowledge))],
      questions: [...(await questionsOf(judged, judge, knowledge))] as Assessment['questions'],
      changes: [],
      windows: [],
      alternatives: [...(await alternativesOf(judged, proposal, knowledge, judgeOther))],
      expect: expectationsOf(asked, judged.facts.read),
      after: [...(await followUpsOf(followUps, asked, judged.facts.read))],
      prunings: [...(await pruningsOf(proposal, knowledge, judgeOther))],
      cautions: await cautionsOf(cautions, judged.facts.read, knowledge),
      notices: [...noticesOf(prepared, judged, rules)],
      basis: basisOf(prepared, judged, rules),
      ...(proposal.meta === undefined ? {} : { meta: proposal.meta }),
    };
  };

  return { knowledge, assess, findSpecies: (name) => findSpecies(knowledge, name) };
};

import { type Advisor, createAdvisor } from '../../advisor.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import type { Station } from '../../season/station.js';
import { engineRuns } from './engineRuns.js';
import { median, timed } from './timing.js';

/** The tree whose year is asked. */
const yearAsked = { tree: { species: 'acer-buergerianum', vigour: 'strong' }, where: { place: 'koeln-cologne-germany' }, from: '2026-01-01' } as const;

/** Whole answers, facts, season and advice included, in milliseconds. */
export interface WholeAnswers {
  readonly firstAssessment: number;
  readonly coldAssessment: number;
  readonly assessment: number;
  readonly verdict: number;
  readonly assessmentOfFull: number;
  readonly verdictOfFull: number;
  readonly verdictElsewhere: number;
  readonly yearFromEmpty: number;
  readonly year: number;
}

const rounds = 15;

/** Few enough that their places and seasons are all remembered from one round to the next; of more, the oldest are forgotten. */
const remembered = 60;

const each = async (proposals: readonly unknown[], ask: (proposal: unknown) => Promise<unknown>): Promise<number> => {
  const took: number[] = [];
  for (const proposal of proposals) took.push(await timed(async () => await ask(proposal)));
  return median(took);
};

const again = async (work: () => Promise<number>): Promise<number> => {
  const medians: number[] = [];
  for (let round = 0; round < rounds; round++) medians.push(await work());
  return median(medians);
};

/**
 * @param proposals with logs and structures, at as many places
 * @param plain questions as they are mostly asked
 */
export const wholeAnswers = async (knowledge: Knowledge, stations: readonly Station[], proposals: readonly unknown[], plain: readonly unknown[]): Promise<WholeAnswers> => {
  const newAdvisor = (): Advisor => createAdvisor(knowledge, { places: stations });
  const advisor = newAdvisor();
  const firstAssessment = await timed(async () => await advisor.assess(proposals[0]));
  const coldAssessment = await each(proposals, advisor.assess);
  const verdictElsewhere = await each(proposals, advisor.verdict);
  const few = proposals.filter((_, i) => i % Math.ceil(proposals.length / remembered) === 0);
  const assessmentOfFull = await again(async () => await each(few, advisor.assess));
  const verdictOfFull = await again(async () => await each(few, advisor.verdict));
  const assessment = await again(async () => await each(plain, advisor.assess));
  const verdict = await again(async () => await each(plain, advisor.verdict));
  const yearFromEmpty = await again(async () => {
    const empty = newAdvisor();
    return await timed(async () => await empty.year(yearAsked));
  });
  return { firstAssessment, coldAssessment, assessment, verdict, assessmentOfFull, verdictOfFull, verdictElsewhere, yearFromEmpty, year: await again(async () => await timed(async () => await advisor.year(yearAsked))) };
};

/** Runs of json-rules-engine for a year of one tree: each operation in its usual ways from empty, asked again, and each operation with nothing told of it from empty. */
export const yearRuns = async (knowledge: Knowledge, stations: readonly Station[]): Promise<{ readonly fromEmpty: number; readonly warm: number; readonly untold: number }> => {
  const newAdvisor = (): Advisor => createAdvisor(knowledge, { places: stations });
  const advisor = newAdvisor();
  const fromEmpty = await engineRuns(async () => await advisor.year(yearAsked));
  const warm = await engineRuns(async () => await advisor.year(yearAsked));
  const untold = await engineRuns(async () => await newAdvisor().year({ ...yearAsked, operations: Object.keys(knowledge.operations).map((op) => ({ op })) }));
  return { fromEmpty, warm, untold };
};

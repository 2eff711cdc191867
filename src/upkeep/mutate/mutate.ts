import { readyFor } from '../../advice/ready.js';
import { evaluate, type Fired } from '../../engine/evaluate.js';
import { type Folds, newFolds, specialise } from '../../engine/specialise.js';
import { judgementOf } from '../../engine/verdict.js';
import type { Knowledge, Rule, Verdict } from '../../knowledge/knowledge.js';
import type { Station } from '../../season/station.js';
import { runExample } from '../runExample.js';
import type { KnownCase } from '../wholeCorpus.js';
import { type Mutant, mutantsOf } from './mutantsOf.js';

/** How well a rule is watched: of so many ways to put it wrong, how many its examples or the cases notice. */
export interface Watched {
  readonly rule: string;
  readonly mutants: number;
  readonly killed: number;
  readonly survivors: readonly Mutant[];
}

/** A case as it stands: which rules fire, and what a rule put wrong would make of it. */
interface Standing {
  readonly accept: readonly Verdict[];
  readonly fired: readonly Fired<Rule>[];
  readonly again: (rule: Rule) => Promise<readonly Fired<Rule>[]>;
}

const standingCases = async (knowledge: Knowledge, stations: readonly Station[], cases: readonly KnownCase[], folds: Folds): Promise<readonly Standing[]> => {
  const ready = readyFor(knowledge, stations);
  const standing: Standing[] = [];
  for (const { proposal, accept } of cases) {
    const { prepared, judge } = await ready(proposal);
    const { fired, facts } = await judge();
    const { operation, traits } = prepared.asked;
    const again = async (rule: Rule): Promise<readonly Fired<Rule>[]> => {
      if (rule.operations !== 'all' && !rule.operations.includes(operation.id)) return [];
      const residual = await specialise(rule, operation.id, traits, knowledge, folds);
      return residual === undefined ? [] : await evaluate([residual], facts.read);
    };
    /* A case that is not met as it stands cannot tell a rule put wrong from one put right. */
    if (accept.includes(judgementOf(fired).verdict)) standing.push({ accept, fired, again });
  }
  return standing;
};

const noticedByExamples = async (mutant: Mutant, knowledge: Knowledge, folds: Folds): Promise<boolean> => {
  for (const example of mutant.rule.examples) {
    if (example.verdict !== undefined && example.verdict !== mutant.rule.verdict) return true;
    if ((await runExample(mutant.rule, example, knowledge, folds)) !== example.fires) return true;
  }
  return false;
};

const noticedByCases = async (mutant: Mutant, standing: readonly Standing[]): Promise<boolean> => {
  for (const { accept, fired, again } of standing) {
    const others = fired.filter(({ residual }) => residual.rule.id !== mutant.rule.id);
    if (!accept.includes(judgementOf([...others, ...(await again(mutant.rule))]).verdict)) return true;
  }
  return false;
};

/** Puts each rule wrong in every small way, and counts what its own examples or the known cases notice. */
export const mutate = async (knowledge: Knowledge, rules: readonly Rule[], stations: readonly Station[], cases: readonly KnownCase[]): Promise<readonly Watched[]> => {
  const folds = newFolds();
  const standing = await standingCases(knowledge, stations, cases, folds);
  const watched: Watched[] = [];
  for (const rule of rules) {
    const mutants = mutantsOf(rule, knowledge.facts);
    const survivors: Mutant[] = [];
    for (const mutant of mutants) {
      if (!(await noticedByExamples(mutant, knowledge, folds)) && !(await noticedByCases(mutant, standing))) survivors.push(mutant);
    }
    watched.push({ rule: rule.id, mutants: mutants.length, killed: mutants.length - survivors.length, survivors });
  }
  return watched;
};

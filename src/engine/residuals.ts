import type { Caution, Chore, FollowUp, Knowledge, Rule } from '../knowledge/knowledge.js';
import type { Conditional } from './ruleCondition.js';
import { newFolds, type Residual, specialise, type Traits } from './specialise.js';

/** What is left to ask for one operation on one kind of tree. */
export interface Residuals {
  readonly rules: readonly Residual<Rule>[];
  readonly cautions: readonly Residual<Caution>[];
  readonly followUps: readonly Residual<FollowUp>[];
  readonly chores: readonly Residual<Chore>[];
}

export type ResidualsOf = (operation: string, variant: string, traits: Traits) => Promise<Residuals>;

/** Trees with traits of their own come and go; past so many the kept residual rules are dropped, with their tables, and made anew when asked for. */
const mostKept = 8000;

/** The residual rules of each (operation, kind of tree), made on first use and kept. */
export const residualsOf = (knowledge: Knowledge): ResidualsOf => {
  let folds = newFolds();
  const kept = new Map<string, Promise<Residuals>>();
  const left = async <Whole extends Conditional & { readonly operations: readonly string[] | 'all' }>(all: readonly Whole[], operation: string, traits: Traits): Promise<readonly Residual<Whole>[]> => {
    const named = all.filter((each) => each.operations === 'all' || each.operations.includes(operation));
    const made = await Promise.all(named.map(async (each) => await specialise(each, operation, traits, knowledge, folds)));
    /* A list that has grown has room for sixteen more; a copy is as long as it is. */
    return made.filter((residual) => residual !== undefined).slice();
  };
  return async (operation, variant, traits) => {
    const key = `${operation} ${variant}`;
    const there = kept.get(key);
    if (there !== undefined) return await there;
    if (kept.size >= mostKept) {
      kept.clear();
      folds = newFolds();
    }
    const made = Promise.all([left(Object.values(knowledge.rules), operation, traits), left(Object.values(knowledge.cautions), operation, traits), left(Object.values(knowledge.followUps), operation, traits), left(Object.values(knowledge.chores), operation, traits)])
      .then(([rules, cautions, followUps, chores]) => ({ rules, cautions, followUps, chores }));
    kept.set(key, made);
    return await made;
  };
};

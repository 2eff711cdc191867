import { newFolds, type Residual, specialise } from '../../engine/specialise.js';
import type { Knowledge, Rule } from '../../knowledge/knowledge.js';

/** What can differ between two states for one operation on one species: nothing, these residual rules, facts worked out with other factors of growth, facts and rules of a proposal that means the same, or anything at all. */
export type Pairs = 'same' | 'factors' | 'facts' | 'whole' | { readonly changed: ReadonlySet<string>; readonly before: readonly Residual<Rule>[]; readonly after: readonly Residual<Rule>[] };

/** Members that only a person reads. */
const words = new Set(['meaning', 'label', 'being', 'seen', 'note', 'because', 'title', 'sources', 'ask']);
const withoutWords = (key: string, value: unknown): unknown => (words.has(key) ? undefined : value);

/** All that facts are worked out of, beside the traits of the species. */
const inputs = ({ facts, operations, phases, alerts }: Knowledge): string => JSON.stringify([facts, operations, phases, alerts], withoutWords);
const factors = ({ growing }: Knowledge): string => JSON.stringify(growing, withoutWords);
const spoken = ({ operations }: Knowledge): string => JSON.stringify(operations, withoutWords);

const decides = ({ operations, verdict, when, unless }: Rule): string => JSON.stringify([operations, verdict, when, unless], withoutWords);

const traitsText = (knowledge: Knowledge, species: string): string => JSON.stringify(knowledge.species[species]?.traits, (key, value: unknown) => (key === 'level' ? undefined : withoutWords(key, value)));

/** Ids of the rules that decide otherwise in one state than in the other, or stand in one alone. */
export const changedRuleIds = (before: Knowledge, after: Knowledge): readonly string[] =>
  [...new Set([...Object.keys(before.rules), ...Object.keys(after.rules)])].filter((id) => {
    const [was, is] = [before.rules[id], after.rules[id]];
    return was === undefined || is === undefined || decides(was) !== decides(is);
  }).sort();

/** Ids of the species that stand in both states, and whose traits differ. */
export const changedSpeciesIds = (before: Knowledge, after: Knowledge): readonly string[] =>
  Object.keys(after.species).filter((id) => before.species[id] !== undefined && traitsText(before, id) !== traitsText(after, id));

/**
 * Tells, for an operation and a species, what can differ between two states of the knowledge.
 * Facts follow from the proposal, the traits and the shared words alone: where those are the same, only rules whose residuals differ can answer otherwise.
 */
export const pairsOf = (before: Knowledge, after: Knowledge): ((operation: string, species: string) => Promise<Pairs>) => {
  const [foldsBefore, foldsAfter] = [newFolds(), newFolds()];
  const changed = changedRuleIds(before, after);
  const reaching = new Set(changedSpeciesIds(before, after));
  const elsewhere = ((): 'factors' | 'facts' | 'whole' | undefined => {
    if (inputs(before) !== inputs(after)) return spoken(before) === spoken(after) ? 'facts' : 'whole';
    if (factors(before) !== factors(after)) return changed.length === 0 ? 'factors' : 'facts';
    return undefined;
  })();
  const kept = new Map<string, Promise<Pairs>>();
  const of = (rule: Rule | undefined, operation: string): rule is Rule => rule !== undefined && (rule.operations === 'all' || rule.operations.includes(operation));
  const look = async (operation: string, species: string): Promise<Pairs> => {
    const [was, is] = [before.species[species], after.species[species]];
    if (was === undefined || is === undefined || reaching.has(species)) return 'whole';
    if (elsewhere !== undefined) return elsewhere;
    const pairs = { changed: new Set<string>(), before: [] as Residual<Rule>[], after: [] as Residual<Rule>[] };
    for (const id of changed) {
      const [rule, other] = [before.rules[id], after.rules[id]];
      const left = of(rule, operation) ? await specialise(rule, operation, was.traits, before, foldsBefore) : undefined;
      const right = of(other, operation) ? await specialise(other, operation, is.traits, after, foldsAfter) : undefined;
      if (JSON.stringify([left?.left, left?.rule.verdict]) === JSON.stringify([right?.left, right?.rule.verdict])) continue;
      pairs.changed.add(id);
      if (left !== undefined) pairs.before.push(left);
      if (right !== undefined) pairs.after.push(right);
    }
    return pairs.changed.size === 0 ? 'same' : pairs;
  };
  return async (operation, species) => {
    const key = `${operation} ${species}`;
    const there = kept.get(key);
    if (there !== undefined) return await there;
    const made = look(operation, species);
    kept.set(key, made);
    return await made;
  };
};

import { freeze } from '../freeze.js';
import type { Knowledge, Rule, Species, Trait } from '../knowledge.js';
import type { FoldedNotes } from './folded.js';
import { fromColumns } from './fromColumns.js';
import { text } from './notes.data.js';

/** Knowledge with its remarks and examples put back. */
export const noted = (knowledge: Knowledge, notes: FoldedNotes): Knowledge => {
  const traitsOf = ({ traits }: Species): Species['traits'] => Object.fromEntries(Object.entries(traits).map(([name, trait]): [string, Trait] => {
    const note = notes.traits[trait.level]?.[name];
    return [name, note === undefined ? trait : { ...trait, note }];
  }));
  const rules = new Map(fromColumns(notes.rules).map((rule) => [rule['id'] as string, rule]));
  const mapped = <Entry>(record: Readonly<Record<string, Entry>>, more: (entry: Entry, id: string) => Entry): Readonly<Record<string, Entry>> => Object.fromEntries(Object.entries(record).map(([id, entry]) => [id, more(entry, id)]));
  return {
    ...knowledge,
    species: mapped(knowledge.species, (species) => ({ ...species, traits: traitsOf(species) })),
    rules: mapped(knowledge.rules, (rule, id): Rule => ({ ...rule, ...rules.get(id) })),
    sources: mapped(knowledge.sources, (source, id) => (notes.sources[id] === undefined ? source : { ...source, note: notes.sources[id] })),
  };
};

/**
 * The bundled knowledge with the remarks beside its traits, rules and sources, and the examples that test each rule.
 *
 * Use it to show what stands behind an answer; no answer needs it.
 * @param knowledge from `sparebud/knowledge` or `knowledgeOf`
 */
export const withNotes = (knowledge: Knowledge): Knowledge => freeze(noted(knowledge, JSON.parse(text) as FoldedNotes));

import { hashOf } from '../../knowledge/hashOf.js';
import type { Knowledge, Species, Trait } from '../../knowledge/knowledge.js';
import type { FoldedCommon, FoldedGroup, FoldedNotes, FoldedTrait, SourcePlaces } from '../../knowledge/published/folded.js';
import type { Columns } from '../../knowledge/published/fromColumns.js';
import { plainId } from '../../knowledge/published/plainId.js';

/** Knowledge as the package holds it. */
export interface FoldedKnowledge {
  readonly common: FoldedCommon;
  readonly groups: Readonly<Record<string, FoldedGroup>>;
  readonly notes: FoldedNotes;
}

type Members = Readonly<Record<string, unknown>>;

const toColumns = (records: readonly Members[]): Columns => {
  const names = [...new Set(records.flatMap((record) => Object.keys(record)))];
  return Object.fromEntries(names.map((name) => [name, records.map((record) => record[name] ?? null)]));
};

const without = (record: object, ...names: readonly string[]): Members => Object.fromEntries(Object.entries(record).filter(([name]) => !names.includes(name)));

const groupOf = (species: Species, all: Knowledge['species']): string => (species.parent === undefined ? species.id : groupOf(all[species.parent]!, all));

const isOwn = (trait: Trait, species: Species): boolean => trait.level === species.id;

const foldGroup = (group: readonly Species[], sourcePlaces: (ids: readonly string[]) => SourcePlaces): FoldedGroup => {
  const at = new Map(group.map((species, i) => [species.id, i]));
  const traits = new Map<string, [number[], unknown[], SourcePlaces[]]>();
  group.forEach((species, i) => {
    for (const [name, trait] of Object.entries(species.traits)) {
      if (!isOwn(trait, species)) continue;
      const folded = traits.get(name) ?? [[], [], []];
      traits.set(name, folded);
      folded[0].push(i);
      folded[1].push(trait.is ?? { either: trait.either });
      folded[2].push(sourcePlaces(trait.sources));
    }
  });
  return {
    hash: hashOf(group),
    names: toColumns(group.map((species) => ({ ...without(species, 'traits', ...(species.id === plainId(species.name) ? ['id'] : [])), ...(species.parent === undefined ? {} : { parent: at.get(species.parent) }) }))),
    traits: Object.fromEntries(traits) satisfies Record<string, FoldedTrait>,
  };
};

const notesOf = (knowledge: Knowledge): FoldedNotes => {
  const traits: Record<string, Record<string, string>> = {};
  for (const species of Object.values(knowledge.species)) {
    const own = Object.entries(species.traits).filter(([, trait]) => trait.note !== undefined && isOwn(trait, species));
    if (own.length > 0) traits[species.id] = Object.fromEntries(own.map(([name, trait]) => [name, trait.note!]));
  }
  return {
    traits,
    rules: toColumns(Object.values(knowledge.rules).map(({ id, note, examples }) => ({ id, ...(note === undefined ? {} : { note }), examples }))),
    sources: Object.fromEntries(Object.values(knowledge.sources).flatMap(({ id, note }) => (note === undefined ? [] : [[id, note]]))),
  };
};

/** Folds flat knowledge small for the package: what species share is said once, at the level that it comes from; lists of records stand as columns, and what no answer needs stands apart. */
export const foldKnowledge = (knowledge: Knowledge): FoldedKnowledge => {
  const { species, sources, rules, ...rest } = knowledge;
  const place = new Map(Object.keys(sources).map((id, i) => [id, i]));
  const sourcePlaces = (ids: readonly string[]): SourcePlaces => (ids.length === 1 ? place.get(ids[0]!)! : ids.map((id) => place.get(id)!));
  const groups = new Map<string, Species[]>();
  for (const each of Object.values(species)) {
    const id = groupOf(each, species);
    groups.set(id, [...(groups.get(id) ?? []), each]);
  }
  return {
    common: {
      ...rest,
      groups: groups.size,
      sources: toColumns(Object.values(sources).map((source) => without(source, 'note'))),
      rules: toColumns(Object.values(rules).map((rule) => ({ ...without(rule, 'note', 'examples'), sources: sourcePlaces(rule.sources), unless: rule.unless.map((reason) => ({ ...reason, sources: sourcePlaces(reason.sources) })) }))),
    },
    groups: Object.fromEntries([...groups].map(([id, group]) => [id, foldGroup(group, sourcePlaces)])),
    notes: notesOf(knowledge),
  };
};

import { freeze } from './freeze.js';
import { hashOf } from './hashOf.js';
import type { Knowledge, Rule, Species, Trait } from './knowledge.js';
import type { Parts } from './parts.js';

type Members = Readonly<Record<string, unknown>>;

const sorted = <Entry>(record: Readonly<Record<string, Entry>>): Readonly<Record<string, Entry>> =>
  Object.fromEntries(Object.entries(record).sort(([a], [b]) => (a < b ? -1 : 1)));

const traitOf = (written: Members, level: string): Trait => {
  const { is, either, note, pack } = written;
  const sources = (written['sources'] as readonly string[] | undefined) ?? [written['source'] as string];
  return { ...(either === undefined ? { is: is as NonNullable<Trait['is']> } : { either: either as NonNullable<Trait['either']> }), sources, ...(note === undefined ? {} : { note: note as string }), level, ...(pack === undefined ? {} : { pack: pack as string }) };
};

/** The files from a group down to a species, the group first. */
export const chainOf = (id: string, species: Parts['species']): readonly string[] => {
  const chain: string[] = [];
  let at: string | undefined = id;
  while (at !== undefined && species.has(at) && !chain.includes(at)) {
    chain.unshift(at);
    at = species.get(at)!.written['parent'] as string | undefined;
  }
  return chain;
};

const named = (written: Members): Pick<Species, 'name' | 'author' | 'commonNames' | 'synonyms'> => ({
  name: written['name'] as string,
  ...(written['author'] === undefined ? {} : { author: written['author'] as string }),
  commonNames: (written['commonNames'] as Species['commonNames'] | undefined) ?? {},
  synonyms: (written['synonyms'] as readonly string[] | undefined) ?? [],
});

const flatSpecies = (parts: Parts): Readonly<Record<string, Species>> => {
  const flat: Record<string, Species> = {};
  for (const [id, { rank, written }] of parts.species) {
    const traits: Record<string, Trait> = {};
    for (const level of chainOf(id, parts.species)) {
      for (const [name, trait] of Object.entries((parts.species.get(level)!.written['traits'] as Record<string, Members> | undefined) ?? {})) traits[name] = traitOf(trait, level);
    }
    const own = { traits: sorted(traits) };
    const parent = written['parent'] === undefined ? {} : { parent: written['parent'] as string };
    flat[id] = { id, ...named(written), rank, ...parent, ...own };
    for (const [member, names] of Object.entries((written['members'] as Record<string, Members> | undefined) ?? {})) {
      if (!parts.species.has(member)) flat[member] = { id: member, ...named(names), rank: 'member', parent: id, ...own };
    }
  }
  return sorted(flat);
};

const ruleOf = (id: string, written: Members): Rule => ({ unless: [], covers: [], reverses: [], ...written, id }) as unknown as Rule;

/** Knowledge as the advisor uses it: inheritance resolved, each value with the level it came from, hashed by content and frozen. */
export const flatten = (parts: Parts): Knowledge => {
  const content = {
    schema: 'knowledge/1' as const,
    version: parts.version,
    facts: parts.facts,
    operations: parts.operations,
    phases: parts.phases,
    sources: sorted(parts.sources),
    species: flatSpecies(parts),
    rules: sorted(Object.fromEntries([...parts.rules].map(([id, written]) => [id, ruleOf(id, written)]))),
    alerts: parts.alerts,
    cautions: sorted(parts.cautions),
    followUps: sorted(parts.followUps),
    chores: sorted(parts.chores),
    soonDays: parts.soonDays,
    againDays: parts.againDays,
    growing: parts.growing,
    aims: parts.aims,
    renames: parts.renames,
    wording: sorted(parts.wording),
    ...(parts.packs === undefined ? {} : { packs: parts.packs }),
  };
  return freeze({ ...content, hash: hashOf(content) });
};

import { freeze } from '../freeze.js';
import type { Knowledge, Rule, SourceWord, Species, Trait } from '../knowledge.js';
import type { FoldedCommon, FoldedGroup, SourcePlaces } from './folded.js';
import { fromColumns } from './fromColumns.js';
import { plainId } from './plainId.js';

type Members = Readonly<Record<string, unknown>>;

const byId = <Entry extends { readonly id: string }>(entries: readonly Entry[]): Readonly<Record<string, Entry>> => Object.fromEntries(entries.map((entry) => [entry.id, entry]));

/** The traits of a group, in order of name, and of each species what it has of its own at these places. */
interface OwnTraits {
  readonly order: readonly string[];
  readonly own: readonly (readonly (Trait | undefined)[])[];
}

const ownTraits = (traits: FoldedGroup['traits'], ids: readonly string[], sourcesAt: (places: SourcePlaces) => readonly string[]): OwnTraits => {
  const order = Object.keys(traits).sort();
  const own: (Trait | undefined)[][] = ids.map(() => []);
  order.forEach((trait, place) => {
    const [species, values, sources] = traits[trait]!;
    species.forEach((at, i) => {
      const value = values[i] as NonNullable<Trait['is']> | { readonly either: NonNullable<Trait['either']> };
      own[at]![place] = { ...(typeof value === 'object' && 'either' in value ? { either: value.either } : { is: value }), sources: sourcesAt(sources[i]!), level: ids[at]! };
    });
  });
  return { order, own };
};

/** The species of a group, each with what it has from its parents: a trait that two share is one object. Traits are put together, and frozen, when they are first looked at: most answers are about one species. */
const speciesOf = (group: FoldedGroup, sourcesAt: (places: SourcePlaces) => readonly string[]): readonly Species[] => {
  const named = fromColumns(group.names).map((members) => ({ ...members, id: (members['id'] as string | undefined) ?? plainId(members['name'] as string) }) as Members & { readonly id: string });
  let unfolded: OwnTraits | undefined;
  const whole: (Species['traits'] | undefined)[] = [];
  const traitsAt = (at: number): Species['traits'] => {
    const kept = whole[at];
    if (kept !== undefined) return kept;
    unfolded ??= ownTraits(group.traits, named.map(({ id }) => id), sourcesAt);
    const { order, own } = unfolded;
    const parent = named[at]!['parent'] as number | undefined;
    const inherited = parent === undefined ? {} : traitsAt(parent);
    if (own[at]!.length === 0) return (whole[at] = inherited);
    const made: Record<string, Trait> = {};
    order.forEach((name, place) => {
      const trait = own[at]![place] ?? inherited[name];
      if (trait !== undefined) made[name] = trait;
    });
    return (whole[at] = freeze(made));
  };
  return named.map((members, at) => {
    const { parent, ...rest } = members as Members & { readonly id: string; readonly parent?: number };
    const species = { ...freeze(rest), ...(parent === undefined ? {} : { parent: named[parent]!.id }), get traits() { return traitsAt(at); } } as unknown as Species;
    return Object.freeze(species);
  });
};

/** One hash of two, the same whichever comes first. */
const both = (a: string, b: string): string => (BigInt(`0x${a}`) ^ BigInt(`0x${b}`)).toString(16).padStart(16, '0');

/** Knowledge of these groups of species, from what the package holds; remarks and the examples of rules are left out of it. */
export const unfold = (common: FoldedCommon, groups: Readonly<Record<string, FoldedGroup>>): Knowledge => {
  const { sources: sourceColumns, rules: ruleColumns, groups: inAll, hash, ...rest } = common;
  const sources = fromColumns(sourceColumns) as unknown as readonly SourceWord[];
  const sourcesAt = (places: SourcePlaces): readonly string[] => (typeof places === 'number' ? [places] : places).map((place) => sources[place]!.id);
  const rules = fromColumns(ruleColumns).map((rule) => ({
    ...rule,
    sources: sourcesAt(rule['sources'] as SourcePlaces),
    unless: (rule['unless'] as readonly Members[]).map((reason) => ({ ...reason, sources: sourcesAt(reason['sources'] as SourcePlaces) })),
    examples: [],
  })) as unknown as readonly Rule[];
  const chosen = Object.keys(groups).sort();
  return {
    ...rest,
    /* Fewer groups answer otherwise, and say so by a hash of their own. */
    hash: chosen.length === inAll ? hash : [hash, ...chosen.map((id) => groups[id]!.hash)].reduce(both),
    sources: byId(sources),
    rules: byId(rules),
    species: byId(chosen.flatMap((id) => speciesOf(groups[id]!, sourcesAt)).sort((a, b) => (a.id < b.id ? -1 : 1))),
  };
};

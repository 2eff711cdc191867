import type { Proposal } from '../contract/types.generated.js';
import type { Asked, Built, Past } from '../facts/asked.js';
import { type Issue, SparebudError } from '../knowledge/error.js';
import { findSpecies, type Found } from '../knowledge/findSpecies.js';
import type { Knowledge, Species, Trait, Value } from '../knowledge/knowledge.js';
import type { Phase, SeasonTraits, Sighting, Standing } from '../season/calendar.js';
import type { climatesAt } from '../season/climatesAt.js';
import type { Where } from '../season/climateShape.js';
import { type Day, dayOf } from '../season/day.js';
import { type Range, type SeasonOn, seasonFromSighting } from '../season/standing.js';
import type { KeptSeasons, SeasonOfDay } from '../season/keptSeasons.js';

/** A proposal made ready to be judged: its species found, its traits put together, its season at hand. */
export interface Prepared {
  readonly asked: Asked;
  readonly species: Species;
  readonly rootstock?: Species;
  readonly renamedFrom?: string;
  /** What the traits depend on: residual rules are kept by it. */
  readonly variant: string;
  /** The same question on another day; a phase that was told stands as a sighting of its own day. */
  readonly on: (day: Day) => Asked;
  /** The season of another day, for a tree that stands so. */
  readonly seasonOn: (day: Day, standing: string) => SeasonOn | undefined;
}

const speciesIssue = (found: Exclude<Found, { kind: 'found' }>, path: string, asked: string): Issue =>
  found.kind === 'ambiguous'
    ? { code: 'ambiguous-species', path, message: `\`${asked}\` in \`${path}\` may be several species`, found: asked, accepted: found.species.map((each) => each.id), help: `say which: ${found.species.map((each) => `\`${each.name}\``).join(', ')}` }
    : {
        code: 'unknown-species', path, message: `unknown species \`${asked.slice(0, 80)}\` in \`${path}\``, found: asked, accepted: found.near,
        help: found.near.length > 0 ? `did you mean ${found.near.map((name) => `\`${name}\``).join(' or ')}?` : found.genus !== undefined ? `the genus \`${found.genus.id}\` is known, and is a good answer` : 'give the accepted name, or the genus or group it belongs to',
      };

const speciesOf = (knowledge: Knowledge, asked: string, path: string): { readonly species: Species; readonly renamed: boolean } => {
  const found = findSpecies(knowledge, asked);
  if (found.kind !== 'found') throw new SparebudError([speciesIssue(found, path, asked)]);
  return { species: found.species, renamed: found.by === 'renamed' };
};

const pickSeasonTraits = (traits: Readonly<Record<string, Trait>>): SeasonTraits => {
  const picked: Record<string, unknown> = { model: traits['season.model']?.is ?? 'deciduous' };
  const take = (name: string, trait: string): void => {
    const value = traits[trait]?.is;
    if (value !== undefined) picked[name] = value;
  };
  for (const name of ['budSwell', 'leafOut', 'hardens', 'turns', 'leafFall']) take(name, `season.${name}`);
  take('minNightC', 'growth.minNightC');
  take('restNeed', 'rest.need');
  take('restSeason', 'rest.season');
  take('coldWeeks', 'rest.coldWeeks');
  take('warmestC', 'rest.warmestC');
  take('flushes', 'growth.flushes');
  return picked as unknown as SeasonTraits;
};

const pickedOf = new WeakMap<Readonly<Record<string, Trait>>, SeasonTraits>();

/** What the season model needs of a species' traits: the same object each time, since calendars are kept by it. */
export const seasonTraits = (traits: Readonly<Record<string, Trait>>): SeasonTraits => {
  const picked = pickedOf.get(traits) ?? pickSeasonTraits(traits);
  pickedOf.set(traits, picked);
  return picked;
};

const sightingsOf = (proposal: Proposal): readonly Sighting[] =>
  (proposal.tree.log ?? []).flatMap((entry) => (typeof entry['saw'] === 'string' ? [{ phase: entry['saw'] as Phase, day: dayOf(entry['date'] as string) }] : []));

export interface Places {
  /** The climate of a place; the same object each time, since calendars are kept by it. */
  readonly climateAt: ReturnType<typeof climatesAt>;
  readonly seasons: KeptSeasons;
}

/** A day for what no day changes. */
const anyDay: Day = 20_000;

/** Facts ask for the same season over and over: it is looked up once. */
const once = (season: Asked['season']): Asked['season'] => {
  const kept = new Map<string, SeasonOn | undefined>();
  return (phase, standing) => {
    const key = `${phase ?? ''}|${standing}`;
    if (!kept.has(key)) kept.set(key, season(phase, standing));
    return kept.get(key);
  };
};

/**
 * Makes a checked proposal ready.
 *
 * @param builtOf how a told structure is read
 * @param past what is worked out of earlier work, where some is told
 * @throws SparebudError where a species is unknown or ambiguous, or a structure cannot be
 */
export const prepare = (proposal: Proposal, knowledge: Knowledge, places: Places, builtOf?: (proposal: Proposal) => Built, past?: Past): Prepared => {
  const { species, renamed } = speciesOf(knowledge, proposal.tree.species, 'tree.species');
  const stock = proposal.tree.rootstock === undefined ? undefined : speciesOf(knowledge, proposal.tree.rootstock, 'tree.rootstock').species;
  const own = (proposal.tree.traits ?? {}) as Readonly<Record<string, Value>>;
  const roots = stock === undefined ? [] : Object.entries(stock.traits).filter(([name]) => name.startsWith('roots.'));
  const traits: Readonly<Record<string, Trait>> =
    stock === undefined && Object.keys(own).length === 0
      ? species.traits
      : { ...species.traits, ...Object.fromEntries(roots), ...Object.fromEntries(Object.entries(own).map(([name, is]): [string, Trait] => [name, { is, sources: [], level: 'own' }])) };
  const climate = places.climateAt(proposal.where as Where | undefined);
  const seasonal = seasonTraits(traits);
  const seen = sightingsOf(proposal);
  /* One calendar answers every day; only a phase that is tried out makes another. */
  const seasonsOf = (sightings: readonly Sighting[]): ((day: Day | undefined, ...under: Parameters<Asked['season']>) => SeasonOn | undefined) => {
    const kept = new Map<string, SeasonOfDay>();
    return (day, phase, standing) => {
      if (day === undefined) return phase === undefined ? undefined : seasonFromSighting(phase as Phase, standing as Standing);
      if (phase !== undefined) return places.seasons(climate, seasonal, day, [...sightings, { phase: phase as Phase, day }], standing as Standing)(day);
      const season = kept.get(standing) ?? places.seasons(climate, seasonal, day, sightings, standing as Standing);
      kept.set(standing, season);
      return season(day);
    };
  };
  const operation = knowledge.operations[proposal.operation.op]!;
  const built = builtOf?.(proposal);
  const day = proposal.date === undefined ? undefined : dayOf(proposal.date);
  const winterLowC = (): Range | undefined => places.seasons(climate, seasonal, day ?? anyDay, seen, 'outdoors')(day ?? anyDay).winterLowC;
  const grownDaysOf = (sightings: readonly Sighting[]): Asked['grownDays'] => {
    const kept = new Map<string, SeasonOfDay>();
    return (from, to, standing) => {
      if (climate.quality === 'none') return undefined;
      const season = kept.get(standing) ?? places.seasons(climate, seasonal, to, sightings, standing as Standing);
      kept.set(standing, season);
      const days = season.grown(from, to);
      return days === undefined ? undefined : { days, sure: climate.quality !== 'latitude' };
    };
  };
  const seasonNow = seasonsOf(seen);
  const asked: Asked = { knowledge, proposal, operation, speciesId: species.id, traits, ...(day === undefined ? {} : { day }), climate, ...(built === undefined ? {} : { built }), ...(past === undefined ? {} : { past }), season: once((phase, standing) => seasonNow(day, phase, standing)), winterLowC, grownDays: grownDaysOf(seen), tried: new Map() };
  const { phase: told, ...tree } = proposal.tree;
  const elsewhen: Proposal = { ...proposal, tree };
  const later = told === undefined || day === undefined ? seen : [...seen, { phase: told, day }];
  const laterSeasons = seasonsOf(later);
  const laterGrown = grownDaysOf(later);
  return {
    asked,
    on: (other) => (other === day ? asked : { ...asked, proposal: elsewhen, day: other, season: (phase, standing) => laterSeasons(other, phase, standing), grownDays: laterGrown }),
    seasonOn: (other, standing) => laterSeasons(other, undefined, standing),
    species,
    ...(stock === undefined ? {} : { rootstock: stock }),
    ...(renamed ? { renamedFrom: proposal.tree.species } : {}),
    variant: stock === undefined && Object.keys(own).length === 0 ? species.id : JSON.stringify([species.id, stock?.id, own]),
  };
};

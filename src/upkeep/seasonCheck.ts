import { seasonTraits } from '../advice/prepare.js';
import { findSpecies } from '../knowledge/findSpecies.js';
import type { Knowledge, Species } from '../knowledge/knowledge.js';
import { type Phase, seasonCalendar } from '../season/calendar.js';
import { climateOf } from '../season/climate.js';
import { dayOf } from '../season/day.js';
import { distanceKm } from '../season/distanceKm.js';
import { placedSteps } from '../season/placedSteps.js';
import type { Station } from '../season/station.js';

/** What is compared: the phase of ours that an observed event stands for. */
export const seasonEvents = ['leaf-out', 'hardening', 'turning', 'leaf fall'] as const;
export type SeasonEvent = (typeof seasonEvents)[number];

const phaseOf: Readonly<Record<SeasonEvent, Phase>> = { 'leaf-out': 'leafing-out', hardening: 'hardened-off', turning: 'turning', 'leaf fall': 'leaf-fall' };

/** A mean date that was observed, day of the year (1 January is 1). */
export interface Observation {
  readonly source: string;
  readonly species: string;
  readonly event: SeasonEvent;
  readonly site: string;
  readonly latitude: number;
  readonly longitude: number;
  readonly dayOfYear: number;
}

const eventOf = (written: string): SeasonEvent | undefined => {
  if (written === 'bud break' || written === 'spring green-up') return 'leaf-out';
  if (written.startsWith('75%')) return 'hardening';
  if (written === 'leaf colouration' || written === 'autumn green-down') return 'turning';
  return written === 'leaf fall' ? 'leaf fall' : undefined;
};

/**
 * Colour in Tokyo, ordinary years 1991-2020 (28 and 23 November): an autumn's date less the days by which it was said to be late, as its news gave both. "Red" and "yellow"
 * there mean that most leaves have turned.
 */
const tokyo = { source: 'jma-autumn-news-2021', event: 'turning', site: 'Tokyo', latitude: 35.69, longitude: 139.75 } as const;
const fromNews: readonly Observation[] = [{ ...tokyo, species: 'Acer palmatum', dayOfYear: 332 }, { ...tokyo, species: 'Ginkgo biloba', dayOfYear: 327 }];

/** Observed dates of leaf and colour: those of phenology.csv (bloom apart, which no phase stands for), and two of Tokyo. */
export const seasonObservations = (phenologyCsv: string): readonly Observation[] => [
  ...phenologyCsv.split('\n').filter((line) => line !== '' && !line.startsWith('#')).slice(1).flatMap((line) => {
    const [source = '', species = '', written = '', site = '', latitude = '', longitude = '', dayOfYear = ''] = line.split(',');
    const event = eventOf(written);
    return event === undefined ? [] : [{ source, species, event, site, latitude: Number(latitude), longitude: Number(longitude), dayOfYear: Number(dayOfYear) }];
  }),
  ...fromNews,
];

/** Whom the catalogue answers for by the observed name; a mixed canopy is answered by the group of its trees. */
export const observedSpecies = (knowledge: Knowledge, name: string): Species | undefined => {
  if (name === 'canopy') return knowledge.species['temperate-deciduous'];
  const found = findSpecies(knowledge, name.replace(/ sp\.$/, ''));
  return found.kind === 'found' ? found.species : undefined;
};

/** A site this near to a bundled station counts as observed there, km. */
export const withinKm = 40;

/** The day of an ordinary year on which a phase begins for a species at a bundled station; undefined where the model has no such phase. */
export const beginsAt = (species: Species, station: Station, event: SeasonEvent): number | undefined => {
  const year = station.latitude < 0 ? 2026 : 2025;
  const calendar = seasonCalendar(climateOf({ place: station.id }, [station]), seasonTraits(species.traits), dayOf(station.latitude < 0 ? '2026-10-01' : '2026-06-01'));
  const from = placedSteps(calendar, year).find((step) => step.year === year && step.phase === phaseOf[event])?.from;
  return from === undefined ? undefined : from - dayOf('2026-01-01') + 1;
};

/** One cell of the table with an observation in it. */
export interface SeasonCell {
  readonly species: Species;
  readonly station: Station;
  readonly event: SeasonEvent;
  readonly ours: number | undefined;
  /** Mean over the sites. */
  readonly observed: number;
  readonly sites: readonly Observation[];
  /** Our date was worked out from this very source: the cell shows that the sums hold, not that they foretell. */
  readonly fitted: boolean;
}

const traitOf: Readonly<Record<SeasonEvent, string>> = { 'leaf-out': 'season.leafOut', hardening: 'season.hardens', turning: 'season.turns', 'leaf fall': 'season.leafFall' };
const sourceIds: Readonly<Record<string, string>> = { hf003: 'harvard-forest-hf003', phenocam: 'phenocam-v1' };

/* The date from which turning is counted was fitted on these canopies (autumnDate.ts). */
const fittedOn = (species: Species, event: SeasonEvent, source: string): boolean =>
  (source === 'phenocam' && event === 'turning') || species.traits[traitOf[event]]?.sources.includes(sourceIds[source] ?? source) === true;

/** Every cell of species, place and event in which something was observed. */
export const seasonCells = (knowledge: Knowledge, species: readonly string[], places: readonly Station[], observations: readonly Observation[]): readonly SeasonCell[] => {
  const answering = new Map([...new Set(observations.map((one) => one.species))].map((name) => [name, observedSpecies(knowledge, name)?.id]));
  return species.flatMap((id) => places.flatMap((station) => seasonEvents.flatMap((event) => {
    const sites = observations.filter((one) =>
      one.event === event && answering.get(one.species) === id && distanceKm(one.latitude, one.longitude, station.latitude, station.longitude) <= withinKm);
    if (sites.length === 0) return [];
    const tree = knowledge.species[id]!;
    const observed = sites.reduce((sum, site) => sum + site.dayOfYear, 0) / sites.length;
    return [{ species: tree, station, event, ours: beginsAt(tree, station, event), observed, sites, fitted: fittedOn(tree, event, sites[0]!.source) }];
  })));
};

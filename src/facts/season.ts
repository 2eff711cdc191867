import type { Alert } from '../knowledge/knowledge.js';
import { isoOf } from '../season/day.js';
import type { Range } from '../season/standing.js';
import type { Asked, Derive, Read } from './asked.js';
import { type FactValue, known, unknown } from './factValue.js';

const seasonOf = (read: Read, asked: Asked): ReturnType<Asked['season']> => {
  const phase = read('season.phase');
  read('asked.date');
  read('place.told');
  return asked.season(phase.from === 'given' ? (phase.value as string) : undefined, read('tree.standing').value as string);
};

/** A figure of the season: known from a station, normals or stated frosts; estimated, within bounds that are sure, from latitude alone. */
export const seasonFigure = (range: Range | undefined): FactValue | undefined => {
  if (range === undefined) return undefined;
  const bounds = { atLeast: range.atLeast, atMost: range.atMost };
  if (Number.isNaN(range.value)) return unknown(bounds);
  if (!range.sure) return { state: 'estimated', value: range.value, among: bounds, from: 'season' };
  return { ...known(range.value, 'season'), plusMinus: Math.round(Math.max(range.value - range.atLeast, range.atMost - range.value)) };
};

const figure = (pick: (season: NonNullable<ReturnType<Asked['season']>>) => Range | undefined): Derive => (read, asked) => {
  const season = seasonOf(read, asked);
  return season === undefined ? unknown() : (seasonFigure(pick(season)) ?? unknown());
};

/** Diseases and pests of the species that alerts name for the region told, or may name where only a point on the map is told. */
const diseasesOf = (alerts: readonly Alert[], read: Read, asked: Asked): FactValue => {
  const risks = asked.traits['pruning.diseaseRisks']?.is as readonly string[] | undefined;
  const region = read('place.region');
  const named = (of: (alert: Alert) => boolean): readonly string[] => [...new Set(alerts.filter((alert) => risks?.includes(alert.disease) && of(alert)).map((alert) => alert.disease))].sort();
  if (region.from === 'given') return known(named((alert) => alert.regions.some((each) => each === region.value || String(region.value).startsWith(`${each}-`))), 'worked-out');
  const { latitude, longitude } = asked.proposal.where ?? {};
  const near = named(({ box }) => box !== undefined && latitude !== undefined && longitude !== undefined && latitude >= box[0] && latitude <= box[1] && longitude >= box[2] && longitude <= box[3]);
  return near.length === 0 ? known([], 'worked-out') : unknown([[], near]);
};

const frost = (pick: (season: NonNullable<ReturnType<Asked['season']>>) => Range | 'none' | undefined, never: number): Derive => (read, asked) => {
  const season = seasonOf(read, asked);
  const days = season === undefined ? undefined : pick(season);
  return days === 'none' ? known(never, 'season') : (seasonFigure(days) ?? unknown());
};

/** Facts of season and place. */
export const seasonFacts: Readonly<Record<string, Derive>> = {
  'season.phase': (read, asked) => {
    read('asked.date');
    read('place.told');
    const season = asked.season(undefined, read('tree.standing').value as string);
    if (season?.phase !== undefined && season.phaseSure) return known(season.phase, season.phaseFrom);
    if (season?.phase !== undefined) return { state: 'estimated', value: season.phase, ...(season.among === undefined ? {} : { among: season.among }), from: 'season' };
    const model = asked.traits['season.model']?.is as string | undefined;
    const among = season?.among ?? Object.values(asked.knowledge.phases).filter((phase) => model === undefined || phase.models.includes(model)).map((phase) => phase.id);
    return unknown(among);
  },
  'season.growingDaysLeft': figure((season) => season.growingDaysLeft),
  'season.rootDaysLeft': figure((season) => season.rootDaysLeft),
  'season.daysToBudSwell': figure((season) => season.daysToBudSwell),
  'season.daysToFirstFrost': frost((season) => season.daysToFirstFrost, 366),
  'season.daysToLastFrost': frost((season) => season.daysToLastFrost, 0),
  'season.nightC': figure((season) => season.nightC),
  'season.coldNightC': figure((season) => season.coldNightC),
  'season.dayC': figure((season) => season.dayC),
  'season.awakeEarly': (read, asked) => {
    const early = seasonOf(read, asked)?.awakeEarly;
    return early === undefined ? undefined : known(early, 'season');
  },
  'asked.date': (_, asked) => (asked.day === undefined ? undefined : known(true, 'given')),
  'place.told': (_, asked) => (asked.climate.quality === 'none' ? undefined : known(true, 'given')),
  'place.winterLowC': (read, asked) => {
    read('place.told');
    return seasonFigure(asked.winterLowC()) ?? unknown();
  },
  'disease.inSeason': (read, asked) => {
    const date = asked.day === undefined ? undefined : isoOf(asked.day).slice(5);
    const there = diseasesOf(asked.knowledge.alerts.filter(({ from, to }) => date === undefined || (from <= to ? from <= date && date <= to : from <= date || date <= to)), read, asked);
    return date === undefined && there.state === 'known' && (there.value as readonly string[]).length > 0 ? unknown([[], there.value as readonly string[]]) : there;
  },
  'disease.here': (read, asked) => diseasesOf(asked.knowledge.alerts, read, asked),
};

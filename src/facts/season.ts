import type { Alert } from '../knowledge/knowledge.js';
import { type Day, isoOf } from '../season/day.js';
import type { Range, SeasonOn } from '../season/standing.js';
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
  const { value, atLeast, atMost, sure } = range;
  if (Number.isNaN(value)) return unknown({ atLeast, atMost });
  return sure ? { state: 'known', value, from: 'season', plusMinus: Math.round(Math.max(value - atLeast, atMost - value)) } : { state: 'estimated', value, among: { atLeast, atMost }, from: 'season' };
};

/** Whether an alert runs on a date, `MM-DD`; its months may span the turn of the year. */
const runs = ({ from, to }: Alert, date: string): boolean => (from <= to ? from <= date && date <= to : from <= date || date <= to);

/** Diseases and pests of the species that alerts name for the region told, or may name where only a point on the map is told: at any time, or on a day. */
const diseasesOf = (read: Read, asked: Asked, day?: Day): FactValue => {
  const risks = asked.traits['pruning.diseaseRisks']?.is as readonly string[] | undefined;
  const region = read('place.region');
  const date = day === undefined ? undefined : isoOf(day).slice(5);
  const named = (there: (alert: Alert) => boolean): readonly string[] => {
    const alerts = asked.knowledge.alerts.filter((alert) => risks?.includes(alert.disease) && there(alert) && (date === undefined || runs(alert, date)));
    return [...new Set(alerts.map((alert) => alert.disease))].sort();
  };
  if (region.from === 'given') return known(named((alert) => alert.regions.some((each) => each === region.value || String(region.value).startsWith(`${each}-`))), 'worked-out');
  const { latitude, longitude } = asked.proposal.where ?? {};
  const near = named(({ box }) => box !== undefined && latitude !== undefined && longitude !== undefined && latitude >= box[0] && latitude <= box[1] && longitude >= box[2] && longitude <= box[3]);
  return near.length === 0 ? known([], 'worked-out') : unknown([[], near]);
};

/** What the season by itself tells of a fact. */
type TellBySeason = (season: SeasonOn | undefined, asked: Asked) => FactValue;

const figure = (pick: (season: SeasonOn) => Range | undefined): TellBySeason => (season) => seasonFigure(season && pick(season)) ?? unknown();

const frost = (pick: (season: SeasonOn) => Range | 'none' | undefined, never: number): TellBySeason => (season) => {
  const days = season && pick(season);
  return days === 'none' ? known(never, 'season') : (seasonFigure(days) ?? unknown());
};

const phase: TellBySeason = (season, { traits, knowledge }) => {
  if (season?.phase !== undefined && season.phaseSure) return known(season.phase, season.phaseFrom);
  if (season?.phase !== undefined) return { state: 'estimated', value: season.phase, ...(season.among === undefined ? {} : { among: season.among }), from: 'season' };
  const model = traits['season.model']?.is as string | undefined;
  const among = season?.among ?? Object.values(knowledge.phases).filter(({ models }) => model === undefined || models.includes(model)).map(({ id }) => id);
  return unknown(among);
};

/** Facts that the season of a day tells by itself, as long as nobody saw another phase on that day. */
export const toldBySeason: Readonly<Record<string, TellBySeason>> = {
  'season.phase': phase,
  'season.growingDaysLeft': figure((season) => season.growingDaysLeft),
  'season.rootDaysLeft': figure((season) => season.rootDaysLeft),
  'season.daysToBudSwell': figure((season) => season.daysToBudSwell),
  'season.daysToFirstFrost': frost((season) => season.daysToFirstFrost, 366),
  'season.daysToLastFrost': frost((season) => season.daysToLastFrost, 0),
  'season.nightC': figure((season) => season.nightC),
  'season.coldNightC': figure((season) => season.coldNightC),
  'season.dayC': figure((season) => season.dayC),
};

const underPhase = (tell: TellBySeason): Derive => (read, asked) => tell(seasonOf(read, asked), asked);

/** Facts of season and place. */
export const seasonFacts: Readonly<Record<string, Derive>> = {
  ...Object.fromEntries(Object.entries(toldBySeason).map(([id, tell]) => [id, underPhase(tell)])),
  'season.phase': (read, asked) => {
    read('asked.date');
    read('place.told');
    return phase(asked.season(undefined, read('tree.standing').value as string), asked);
  },
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
    const ever = read('disease.here');
    if ((ever.value as readonly string[] | undefined)?.length === 0) return ever;
    read('asked.date');
    const there = diseasesOf(read, asked, asked.day);
    return asked.day === undefined && there.state === 'known' && (there.value as readonly string[]).length > 0 ? unknown([[], there.value as readonly string[]]) : there;
  },
  'disease.here': (read, asked) => diseasesOf(read, asked),
};

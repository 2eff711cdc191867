import type { Calendar } from './calendar.js';
import { chillByDay, isChillSeason } from './chillByDay.js';
import type { Day } from './day.js';
import { dayOf } from './day.js';
import { dayOfSeason, inGrowingYear } from './growingYear.js';
import { growthBounds } from './growthBounds.js';
import type { Phase, Sighting } from './seasonTraits.js';
import { seasonFromSighting } from './seasonFromSighting.js';
import type { Range, SeasonOn } from './seasonShape.js';
import type { TurningPoints } from './turningPoints.js';
import { daysInYear } from './yearDay.js';

export type { Range, SeasonOn } from './seasonShape.js';
export { seasonFromSighting } from './seasonFromSighting.js';

/** The whole season to come counts from this many days before it begins. */
const seasonAheadDays = 42;

/** How long a phase seen where no model reaches is taken to last, days. */
const sightingHolds = 10;

interface Placed { readonly year: number; readonly phase: Phase; readonly from: Day; readonly plusMinusDays: number }

/** The phases of three growing years around a day, in order, as day numbers. */
const placedSteps = (calendar: Calendar, year: number, south: boolean): readonly Placed[] => {
  const placed: Placed[] = [];
  for (const one of [year - 1, year, year + 1]) {
    for (const step of calendar.moved[one]?.steps ?? calendar.ordinary?.steps ?? []) {
      placed.push({ year: one, phase: step.phase, from: dayOfSeason(one, step.from, south), plusMinusDays: step.plusMinusDays });
    }
  }
  return placed;
};

const known = (value: number, plusMinus: number, most = daysInYear + 1): Range =>
  ({ value: Math.min(most, value), atLeast: Math.min(most, Math.max(0, value - plusMinus)), atMost: Math.min(most, Math.max(0, value + plusMinus)), sure: true });

const estimate = (value: number, atLeast: number, atMost: number): Range =>
  ({ value: Math.min(atMost, Math.max(atLeast, value)), atLeast, atMost, sure: atLeast === atMost });

/** Days left in a run of the year that begins at `start` and ends at `end` (season days): 0 outside it, and the whole run from six weeks before it. */
const daysLeftIn = (
  day: Day, year: number, south: boolean, runOf: (year: number) => { readonly start: number; readonly end: number } | undefined,
): number => {
  for (const one of [year - 1, year, year + 1]) {
    const run = runOf(one);
    if (run === undefined) continue;
    const start = dayOfSeason(one, run.start, south);
    const end = dayOfSeason(one, run.end, south);
    if (day >= start - seasonAheadDays && day < end) return Math.min(daysInYear, end - Math.max(day, start));
  }
  return 0;
};

/** Mean air below which roots stand still for good: 7 C for temperate trees, 14 C for those from warm countries. */
const rootLimitC = (calendar: Calendar): number =>
  calendar.traits.model === 'tropical' || calendar.traits.model === 'dry-deciduous' ? 14 : 7;

const rootRun = (meanC: readonly number[], limitC: number): { readonly start: number; readonly end: number } | 'always' | undefined => {
  const warmest = meanC.indexOf(Math.max(...meanC));
  if ((meanC[warmest] ?? 0) < limitC) return undefined;
  if (Math.min(...meanC) >= limitC) return 'always';
  let start = warmest;
  while ((meanC[(start - 1 + daysInYear) % daysInYear] ?? 0) >= limitC) start -= 1;
  let end = warmest;
  while ((meanC[end % daysInYear] ?? 0) >= limitC) end += 1;
  return { start, end };
};

const latestSighting = (calendar: Calendar, day: Day, within: number): Sighting | undefined =>
  calendar.sightings.findLast((seen) => seen.day <= day && day - seen.day <= within);

const awake: readonly Phase[] = ['bud-burst', 'leafing-out', 'extending', 'growing'];
const warming: readonly Phase[] = ['bud-swell', 'bud-burst', 'leafing-out', 'extending'];

/**
 * What the season says about a tree on one day.
 *
 * Use it for any day, also of other years: they follow the tree's ordinary year. Ranges say how far each number may be off: where `sure` is false it is an
 * estimate, and `atLeast` to `atMost` hold whatever the estimate is worth.
 * @param calendar as `seasonCalendar` gave it
 * @param day days since 1970-01-01 UTC
 * @returns only what is known; what is missing is unknown
 */
export const seasonOn = (calendar: Calendar, day: Day): SeasonOn => {
  const { climate, climateYear: place, traits } = calendar;
  const underCover = calendar.standing !== 'outdoors' && calendar.standing !== 'cold-frame';
  if (place === undefined) {
    const seen = latestSighting(calendar, day, sightingHolds);
    return {
      ...(seen ? seasonFromSighting(traits, seen.phase) : { phaseFrom: 'none' as const, phaseSure: false }),
      plusMinusDays: calendar.plusMinusDays, notes: calendar.notes,
    };
  }
  const { south } = place;
  const { year, seasonDay } = inGrowingYear(day, south);
  const hours = climate.latitude === undefined ? undefined : place.daylengthH[seasonDay];
  const lightH = hours === undefined ? {} : { dayLengthH: hours };
  const sure = climate.quality !== 'latitude';
  const error = calendar.plusMinusDays;

  const air = airOn(calendar, day, seasonDay, sure, underCover);
  const frost = frostOn(calendar, day, year, sure);
  const hasModel = calendar.ordinary !== undefined && calendar.ordinary.steps.length > 0 && !underCover;
  const base = {
    ...lightH, ...air, ...frost, plusMinusDays: error, notes: calendar.notes,
  };
  if (!hasModel) {
    const seen = latestSighting(calendar, day, sightingHolds);
    const bySight = seen ? seasonFromSighting(traits, seen.phase) : undefined;
    // The length of the day bounds a temperate tree's growth under glass as well.
    const bound = growthBounds(calendar, day);
    const left = bySight?.growingDaysLeft;
    return {
      ...bySight,
      ...base,
      phaseFrom: bySight?.phaseFrom ?? 'none',
      phaseSure: bySight?.phaseSure ?? false,
      ...(left === undefined ? {} : { growingDaysLeft: { ...left, atMost: Math.min(left.atMost, bound), atLeast: Math.min(left.atLeast, bound), value: Math.min(left.value, bound) } }),
      ...(underCover || calendar.ordinary === undefined ? {} : rootsOn(calendar, day, year, sure, seen?.phase)),
      ...(seen === undefined ? {} : { awakeEarly: awake.includes(seen.phase) && frostAhead(frost.daysToLastFrost) }),
    };
  }

  const steps = placedSteps(calendar, year, south);
  const index = steps.findLastIndex((step) => step.from <= day);
  const step = steps[index];
  const seenNow = latestSighting(calendar, day, sightingHolds);
  const far = seenNow !== undefined && step !== undefined && seenNow.day === day && seenNow.phase !== step.phase;
  const phase = far ? seenNow.phase : step?.phase;
  const seen = seenNow !== undefined && seenNow.phase === phase;
  const among = sure || seen ? undefined : [...new Set(steps
    .filter((one, i) => one.from - one.plusMinusDays <= day && (steps[i + 1]?.from ?? Infinity) + (steps[i + 1]?.plusMinusDays ?? 0) > day)
    .map((one) => one.phase))];
  const pointsOf = (one: number): TurningPoints | undefined => calendar.moved[one] ?? calendar.ordinary;
  const always = calendar.ordinary?.always === true;
  const growing = always ? daysInYear : daysLeftIn(day, year, south, (one) => {
    const points = pointsOf(one);
    return points?.start === undefined || points.end === undefined ? undefined : { start: points.start, end: points.end };
  });
  const most = growthBounds(calendar, day);
  const bySight = seen && phase !== undefined ? seasonFromSighting(traits, phase).growingDaysLeft : undefined;
  const growingDaysLeft = sure ? known(growing, growing === 0 ? 0 : error)
    : estimate(growing, Math.min(most, bySight?.atLeast ?? 0), Math.min(most, bySight?.atMost ?? most));
  const starts = [year, year + 1, year + 2].flatMap((one) => {
    const start = pointsOf(one)?.start;
    return start === undefined ? [] : [dayOfSeason(one, start, south)];
  });
  const nextStart = starts.find((start) => start >= day);
  const leafOuts = [year + 1, year, year - 1, year - 2].flatMap((one) => {
    const leafOut = pointsOf(one)?.leafOut;
    return leafOut === undefined ? [] : [dayOfSeason(one, leafOut, south)];
  });
  const lastLeafOut = leafOuts.find((leafOut) => leafOut <= day);
  const count = (days: number): Range => (sure ? known(days, step?.plusMinusDays ?? error) : estimate(days, 0, daysInYear + 1));
  return {
    ...(phase === undefined ? {} : { phase }),
    phaseFrom: seen ? 'seen' : phase === undefined ? 'none' : 'season',
    ...(among === undefined ? {} : { among }),
    phaseSure: sure || seen,
    growingDaysLeft,
    ...rootsOn(calendar, day, year, sure, seen ? phase : undefined),
    // Where growth never stops a start is always at hand, and no leaf-out stands apart from the rest.
    ...(always ? { daysToBudSwell: known(0, 0), daysSinceLeafOut: known(daysInYear, 0) } : {}),
    ...(nextStart === undefined ? {} : { daysToBudSwell: count(nextStart - day) }),
    ...(lastLeafOut === undefined ? {} : { daysSinceLeafOut: count(day - lastLeafOut) }),
    ...base,
    awakeEarly: phase !== undefined && seen && awake.includes(phase) && !always && frostAhead(frost.daysToLastFrost),
    plusMinusDays: step?.plusMinusDays ?? error,
  };
};

const frostAhead = (daysToLastFrost: Range | 'none' | undefined): boolean =>
  daysToLastFrost !== undefined && daysToLastFrost !== 'none' && daysToLastFrost.value > 14;

const rootsOn = (calendar: Calendar, day: Day, year: number, sure: boolean, seen: Phase | undefined): { readonly rootDaysLeft?: Range } => {
  const place = calendar.climateYear;
  if (place === undefined) return {};
  const run = rootRun(place.meanC, rootLimitC(calendar));
  if (run === undefined) return { rootDaysLeft: sure ? known(0, 0) : estimate(0, 0, daysInYear) };
  if (run === 'always') return { rootDaysLeft: sure ? known(daysInYear, 0) : estimate(daysInYear, 0, daysInYear) };
  let left = daysLeftIn(day, year, place.south, () => run);
  if (left === 0 && seen !== undefined && warming.includes(seen)) left = run.end - run.start;
  return { rootDaysLeft: sure ? known(left, left === 0 ? 0 : calendar.climate.plusMinusDays) : estimate(left, 0, daysInYear) };
};

const frostOn = (
  calendar: Calendar, day: Day, year: number, sure: boolean,
): { readonly daysToLastFrost?: Range | 'none'; readonly daysToFirstFrost?: Range | 'none' } => {
  const place = calendar.climateYear;
  if (place === undefined || place.frost === 'all-year') return {};
  if (place.frost === 'none') return sure ? { daysToLastFrost: 'none', daysToFirstFrost: 'none' } : {};
  const stated = calendar.climate.lastFrost !== undefined && calendar.climate.firstFrost !== undefined;
  const { last, first } = place.frost;
  // A first frost after midwinter belongs to the growing year before.
  const firstIn = first > last ? first : first + daysInYear;
  const at = (season: number, offset: number): Day => dayOfSeason(year + offset, season, place.south);
  const range = (days: number): Range => (sure || stated ? known(days, days === 0 ? 0 : calendar.climate.quality === 'station' ? 10 : 14) : estimate(days, 0, daysInYear + 1));
  const free = [-1, 0, 1].find((offset) => day >= at(last, offset) && day < at(firstIn, offset));
  if (free !== undefined) return { daysToLastFrost: range(0), daysToFirstFrost: range(at(firstIn, free) - day) };
  const nextLast = [-1, 0, 1].map((offset) => at(last, offset)).find((date) => date >= day) ?? day;
  return { daysToLastFrost: range(nextLast - day), daysToFirstFrost: range(0) };
};

type Air = Pick<SeasonOn, 'nightC' | 'coldNightC' | 'dayC' | 'winterLowC' | 'chillPortions'>;

const airOn = (calendar: Calendar, day: Day, seasonDay: number, sure: boolean, underCover: boolean): Air => {
  const place = calendar.climateYear;
  if (place === undefined) return {};
  const degrees = (value: number, plusMinus: number): Range => (sure
    ? { value, atLeast: value - plusMinus, atMost: value + plusMinus, sure: true }
    : { value, atLeast: value - 25, atMost: value + 25, sure: false });
  const rough = calendar.climate.quality === 'frost-dates' ? 4 : 2;
  const winterLowC = degrees(place.coldestMonthMinC - 8, rough + 2);
  // What a room or a glass house holds is not told by the air outside.
  if (underCover) return { winterLowC };
  const reading = calendar.climate.daily?.find((one) => dayOf(one.date) === day);
  const nightC = reading?.minC ?? place.minC[seasonDay] ?? 0;
  const dayC = reading?.maxC ?? place.maxC[seasonDay] ?? 0;
  // Only trees that sleep through winter need chill; working it out is the dearest part of a year.
  const sleeps = calendar.traits.model === 'deciduous' || calendar.traits.model === 'evergreen';
  const portions = sleeps && isChillSeason(seasonDay) ? chillByDay(calendar.climate)[seasonDay] : undefined;
  return {
    nightC: degrees(nightC, reading ? 0 : rough),
    coldNightC: degrees(reading ? nightC : nightC - 1.3 * (place.nightSpreadC[seasonDay] ?? 0), reading ? 0 : rough),
    dayC: degrees(dayC, reading ? 0 : rough),
    winterLowC,
    ...(portions === undefined ? {} : { chillPortions: sure ? known(portions, 10, 200) : estimate(portions, 0, 200) }),
  };
};

/**
 * The phases of the calendar's growing year, from midwinter to the day before the next, in order and without a gap.
 *
 * Use it to draw or print a year. Empty where the model has no reach. `to` is the last day of the phase.
 */
export const phasesOfYear = (calendar: Calendar): readonly { readonly phase: Phase; readonly from: Day; readonly to: Day; readonly plusMinusDays: number }[] => {
  const south = calendar.climateYear?.south ?? false;
  const begin = dayOfSeason(calendar.year, 0, south);
  const end = dayOfSeason(calendar.year + 1, 0, south);
  const steps = placedSteps(calendar, calendar.year, south);
  return steps.flatMap((step, i) => {
    const from = Math.max(step.from, begin);
    const to = Math.min(steps[i + 1]?.from ?? end, end) - 1;
    return from > to ? [] : [{ phase: step.phase, from, to, plusMinusDays: step.plusMinusDays }];
  });
};

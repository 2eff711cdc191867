import { airOn } from './airOn.js';
import { asSeen } from './asSeen.js';
import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { daysLeftIn } from './daysLeftIn.js';
import { frostOn } from './frostOn.js';
import { growthBounds } from './growthBounds.js';
import { dayOfSeason, inGrowingYear } from './growingYear.js';
import { inWarmRoom, leastKeptGrowing } from './inWarmRoom.js';
import { isUnderCover } from './isUnderCover.js';
import { placedSteps } from './placedSteps.js';
import { estimate, known } from './range.js';
import { rootsOn } from './rootsOn.js';
import { seasonFromSighting } from './seasonFromSighting.js';
import type { Range, SeasonOn } from './seasonShape.js';
import type { Phase, Sighting } from './seasonTraits.js';
import { daysInYear } from './yearDay.js';
import { yearFrame } from './yearFrame.js';

export type { Range, SeasonOn } from './seasonShape.js';
export { seasonFromSighting } from './seasonFromSighting.js';

/** How long a phase seen where no model reaches is taken to last, days. */
const sightingHolds = 10;

const latestSighting = (calendar: Calendar, day: Day, within: number): Sighting | undefined =>
  calendar.sightings.findLast((seen) => seen.day <= day && day - seen.day <= within);

const awake: readonly Phase[] = ['bud-burst', 'leafing-out', 'extending', 'growing'];

const frostAhead = (daysToLastFrost: Range | 'none' | undefined): boolean =>
  daysToLastFrost !== undefined && daysToLastFrost !== 'none' && daysToLastFrost.value > 14;

/** The most growing days that an estimate leaves open: as many as the day length allows, or more where a phase that is possible would tell of more. */
const mostGrowth = (calendar: Calendar, day: Day, among: readonly Phase[]): number => {
  const most = growthBounds(calendar, day);
  const told = among.map((phase) => seasonFromSighting(phase, calendar.standing).growingDaysLeft);
  return Math.max(most, ...told.map((seen) => (seen !== undefined && seen.atLeast > most ? seen.atMost : 0)));
};

/** What a sighting tells where the outdoor model does not hold: under glass, indoors, or where it has no reach. */
const withoutModel = (
  calendar: Calendar, day: Day, year: number, sure: boolean, toLastFrost: Range | 'none' | undefined,
): Omit<SeasonOn, 'plusMinusDays' | 'notes'> => {
  const underCover = isUnderCover(calendar.standing);
  const seen = latestSighting(calendar, day, sightingHolds);
  // The air outside says nothing about roots under cover.
  const roots = underCover ? {} : rootsOn(calendar, day, year, sure, seen?.phase);
  const light = inWarmRoom(calendar, day);
  if (seen === undefined) return { phaseFrom: light === undefined ? 'none' : 'season', phaseSure: false, ...roots, ...light };
  const bySight = seasonFromSighting(seen.phase, calendar.standing);
  // As long as days are long, what is seen to grow goes on as one that is taken to grow.
  const kept = underCover && seen.phase === 'growing' ? estimate(light?.growingDaysLeft?.value ?? 120, leastKeptGrowing, daysInYear) : undefined;
  const left = bySight.growingDaysLeft ?? kept;
  // The length of the day bounds a temperate tree's growth under glass as well.
  const most = growthBounds(calendar, day);
  return {
    ...bySight,
    ...(kept === undefined ? {} : { rootDaysLeft: kept }),
    ...(left === undefined ? {} : { growingDaysLeft: asSeen(estimate(left.value, 0, most), left) }),
    ...roots,
    awakeEarly: awake.includes(seen.phase) && frostAhead(toLastFrost),
  };
};

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
  const { climate, climateYear: place } = calendar;
  const underCover = isUnderCover(calendar.standing);
  if (place === undefined) {
    const seen = latestSighting(calendar, day, sightingHolds);
    const bySight = seen === undefined ? { phaseFrom: 'none' as const, phaseSure: false } : seasonFromSighting(seen.phase, calendar.standing);
    return { ...bySight, plusMinusDays: calendar.plusMinusDays, notes: calendar.notes };
  }
  const { south } = place;
  const { year, seasonDay } = inGrowingYear(day, south);
  const hours = climate.latitude === undefined ? undefined : place.daylengthH[seasonDay];
  const sure = climate.quality !== 'latitude';
  const error = calendar.plusMinusDays;

  const air = airOn(calendar, day, seasonDay, sure, underCover);
  const frost = frostOn(calendar, day, year, sure);
  const hasModel = calendar.ordinary !== undefined && calendar.ordinary.steps.length > 0 && !underCover;
  /* Set one by one: a year of days is asked of this, and spreading objects of many shapes is slow. */
  const on: { -readonly [Key in keyof SeasonOn]: SeasonOn[Key] } = { phaseFrom: 'none', phaseSure: false, plusMinusDays: error, notes: calendar.notes };
  if (!hasModel) Object.assign(on, withoutModel(calendar, day, year, sure, frost.daysToLastFrost));
  Object.assign(on, air, frost);
  if (hours !== undefined) on.dayLengthH = hours;
  if (!hasModel) return on;

  const steps = placedSteps(calendar, year);
  const index = steps.findLastIndex((step) => step.from <= day);
  const step = steps[index];
  const seenNow = latestSighting(calendar, day, sightingHolds);
  const far = seenNow !== undefined && step !== undefined && seenNow.day === day && seenNow.phase !== step.phase;
  const phase = far ? seenNow.phase : step?.phase;
  const seen = seenNow !== undefined && seenNow.phase === phase;
  const among = sure || seen ? undefined : [...new Set(steps
    .filter((one, i) => one.from - one.plusMinusDays <= day && (steps[i + 1]?.from ?? Infinity) + (steps[i + 1]?.plusMinusDays ?? 0) > day)
    .map((one) => one.phase))];
  const frame = yearFrame(calendar, year);
  const always = calendar.ordinary?.always === true;
  const growing = always ? daysInYear : daysLeftIn(day, frame.growth);
  const bySight = seen && phase !== undefined ? seasonFromSighting(phase, calendar.standing) : undefined;
  const nextStart = frame.starts.find((start) => start >= day);
  const lastLeafOut = frame.leafOuts.find((leafOut) => leafOut <= day);
  const count = (days: number): Range => (sure ? known(days, step?.plusMinusDays ?? error) : estimate(days, 0, daysInYear + 1));
  if (phase !== undefined) on.phase = phase;
  on.phaseFrom = seen ? 'seen' : phase === undefined ? 'none' : 'season';
  if (among !== undefined) on.among = among;
  on.phaseSure = sure || seen;
  on.growingDaysLeft = asSeen(sure ? known(growing, growing === 0 ? 0 : error) : estimate(growing, 0, mostGrowth(calendar, day, among ?? [])), bySight?.growingDaysLeft);
  const { rootDaysLeft } = rootsOn(calendar, day, year, sure, seen ? phase : undefined);
  if (rootDaysLeft !== undefined) on.rootDaysLeft = rootDaysLeft;
  // Where growth never stops a start is always at hand, and no leaf-out stands apart from the rest.
  if (nextStart !== undefined) on.daysToBudSwell = count(nextStart - day);
  else if (always) on.daysToBudSwell = known(0, 0);
  if (lastLeafOut !== undefined) on.daysSinceLeafOut = asSeen(count(day - lastLeafOut), bySight?.daysSinceLeafOut);
  else if (always) on.daysSinceLeafOut = asSeen(known(daysInYear, 0), bySight?.daysSinceLeafOut);
  on.awakeEarly = phase !== undefined && seen && awake.includes(phase) && !always && frostAhead(frost.daysToLastFrost);
  on.plusMinusDays = step?.plusMinusDays ?? error;
  return on;
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
  const steps = placedSteps(calendar, calendar.year);
  return steps.flatMap((step, i) => {
    const from = Math.max(step.from, begin);
    const to = Math.min(steps[i + 1]?.from ?? end, end) - 1;
    return from > to ? [] : [{ phase: step.phase, from, to, plusMinusDays: step.plusMinusDays }];
  });
};

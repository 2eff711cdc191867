import { airOn } from './airOn.js';
import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { daysLeftIn } from './daysLeftIn.js';
import { frostOn } from './frostOn.js';
import { growthBounds } from './growthBounds.js';
import { dayOfSeason, inGrowingYear } from './growingYear.js';
import { placedSteps } from './placedSteps.js';
import { estimate, heldTo, known } from './range.js';
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

/** What a sighting tells where the outdoor model does not hold: under glass, indoors, or where it has no reach. */
const withoutModel = (
  calendar: Calendar, day: Day, year: number, sure: boolean, toLastFrost: Range | 'none' | undefined,
): Omit<SeasonOn, 'plusMinusDays' | 'notes'> => {
  const seen = latestSighting(calendar, day, sightingHolds);
  // `ordinary` is missing under cover only: there the air outside says nothing about roots.
  const roots = calendar.ordinary === undefined ? {} : rootsOn(calendar, day, year, sure, seen?.phase);
  if (seen === undefined) return { phaseFrom: 'none', phaseSure: false, ...roots };
  const bySight = seasonFromSighting(calendar.traits, seen.phase);
  // Warm rooms keep what grows growing; for how long nobody can say (practice: two months at least).
  const kept = calendar.ordinary === undefined && seen.phase === 'growing' ? estimate(120, 60, daysInYear) : undefined;
  const left = bySight.growingDaysLeft ?? kept;
  // The length of the day bounds a temperate tree's growth under glass as well; in the open what is seen wins.
  const most = growthBounds(calendar, day);
  const bounded = left === undefined ? undefined : estimate(Math.min(left.value, most), Math.min(left.atLeast, most), Math.min(left.atMost, most));
  return {
    ...bySight,
    ...(kept === undefined ? {} : { rootDaysLeft: kept }),
    ...(bounded === undefined ? {} : { growingDaysLeft: calendar.ordinary === undefined ? bounded : heldTo(bounded, left) }),
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
  const { climate, climateYear: place, traits } = calendar;
  const underCover = calendar.standing !== 'outdoors' && calendar.standing !== 'cold-frame';
  if (place === undefined) {
    const seen = latestSighting(calendar, day, sightingHolds);
    const bySight = seen === undefined ? { phaseFrom: 'none' as const, phaseSure: false } : seasonFromSighting(traits, seen.phase);
    // What grows under cover may stop with the short days outside, wherever that is.
    const left = underCover && 'growingDaysLeft' in bySight ? bySight.growingDaysLeft : undefined;
    return {
      ...bySight,
      ...(left === undefined ? {} : { growingDaysLeft: estimate(left.value, 0, left.atMost) }),
      plusMinusDays: calendar.plusMinusDays, notes: calendar.notes,
    };
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
  const most = growthBounds(calendar, day);
  const bySight = seen && phase !== undefined ? seasonFromSighting(traits, phase) : undefined;
  const nextStart = frame.starts.find((start) => start >= day);
  const lastLeafOut = frame.leafOuts.find((leafOut) => leafOut <= day);
  const count = (days: number): Range => (sure ? known(days, step?.plusMinusDays ?? error) : estimate(days, 0, daysInYear + 1));
  if (phase !== undefined) on.phase = phase;
  on.phaseFrom = seen ? 'seen' : phase === undefined ? 'none' : 'season';
  if (among !== undefined) on.among = among;
  on.phaseSure = sure || seen;
  on.growingDaysLeft = heldTo(sure ? known(growing, growing === 0 ? 0 : error) : estimate(growing, 0, most), bySight?.growingDaysLeft);
  const { rootDaysLeft } = rootsOn(calendar, day, year, sure, seen ? phase : undefined);
  if (rootDaysLeft !== undefined) on.rootDaysLeft = heldTo(rootDaysLeft, bySight?.rootDaysLeft);
  // Where growth never stops a start is always at hand, and no leaf-out stands apart from the rest.
  if (nextStart !== undefined) on.daysToBudSwell = count(nextStart - day);
  else if (always) on.daysToBudSwell = known(0, 0);
  if (lastLeafOut !== undefined) on.daysSinceLeafOut = heldTo(count(day - lastLeafOut), bySight?.daysSinceLeafOut);
  else if (always) on.daysSinceLeafOut = known(daysInYear, 0);
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

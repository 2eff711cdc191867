import { asSeen } from './asSeen.js';
import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { daysLeftIn } from './daysLeftIn.js';
import { estimate, known } from './range.js';
import type { Range } from './seasonShape.js';
import { seasonFromSighting } from './seasonFromSighting.js';
import type { Phase } from './seasonTraits.js';
import { daysInYear } from './yearDay.js';
import { yearFrame } from './yearFrame.js';

/** Phases that show that the soil is warming, whatever the normals say. */
const warming: readonly Phase[] = ['bud-swell', 'bud-burst', 'leafing-out', 'extending'];

/** Days in which cut roots can still grow. `seen` is the phase on the tree, if it was seen. */
export const rootsOn = (calendar: Calendar, day: Day, year: number, sure: boolean, seen: Phase | undefined): { readonly rootDaysLeft?: Range } => {
  const place = calendar.climateYear;
  if (place === undefined) return {};
  const bySight = seen === undefined ? undefined : seasonFromSighting(seen, calendar.standing).rootDaysLeft;
  const left = (days: number, plusMinus: number): { readonly rootDaysLeft: Range } =>
    ({ rootDaysLeft: asSeen(sure ? known(days, plusMinus) : estimate(days, 0, daysInYear), bySight) });
  const run = calendar.rootRun;
  if (run === undefined) return left(0, 0);
  if (run === 'always') return left(daysInYear, 0);
  const inRun = daysLeftIn(day, yearFrame(calendar, year).roots);
  const days = inRun === 0 && seen !== undefined && warming.includes(seen) ? run.end - run.start : inRun;
  return left(days, days === 0 ? 0 : calendar.climate.plusMinusDays);
};

import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { daysLeftIn } from './daysLeftIn.js';
import { estimate, known } from './range.js';
import type { Range } from './seasonShape.js';
import type { Phase } from './seasonTraits.js';
import { daysInYear } from './yearDay.js';
import { yearFrame } from './yearFrame.js';

/** Phases that show that the soil is warming, whatever the normals say. */
const warming: readonly Phase[] = ['bud-swell', 'bud-burst', 'leafing-out', 'extending'];

/** Days in which cut roots can still grow. `seen` is the phase on the tree, if it was seen. */
export const rootsOn = (calendar: Calendar, day: Day, year: number, sure: boolean, seen: Phase | undefined): { readonly rootDaysLeft?: Range } => {
  const place = calendar.climateYear;
  if (place === undefined) return {};
  const run = calendar.rootRun;
  if (run === undefined) return { rootDaysLeft: sure ? known(0, 0) : estimate(0, 0, daysInYear) };
  if (run === 'always') return { rootDaysLeft: sure ? known(daysInYear, 0) : estimate(daysInYear, 0, daysInYear) };
  let left = daysLeftIn(day, yearFrame(calendar, year).roots);
  if (left === 0 && seen !== undefined && warming.includes(seen)) left = run.end - run.start;
  return { rootDaysLeft: sure ? known(left, left === 0 ? 0 : calendar.climate.plusMinusDays) : estimate(left, 0, daysInYear) };
};

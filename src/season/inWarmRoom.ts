import type { Calendar } from './calendar.js';
import { growingLightH } from './climateYear.js';
import type { Day } from './day.js';
import { dayOfSeason, inGrowingYear } from './growingYear.js';
import { estimate } from './range.js';
import type { SeasonOn } from './seasonShape.js';
import type { Phase } from './seasonTraits.js';
import { daysInYear } from './yearDay.js';

/** Warm rooms keep what grows growing: two months at least, for how long after that nobody can say (practice). */
export const leastKeptGrowing = 60;

/**
 * What day length alone tells of a tree of warm lands in a heated room: while days are long it is taken to grow, and may yet stand still.
 *
 * Use it where nothing was seen on the tree. Undefined in short days, elsewhere under cover, and for trees whose year turns on cold: nothing tells of those.
 * @param calendar as `seasonCalendar` gave it
 * @param day days since 1970-01-01 UTC
 */
export const inWarmRoom = (calendar: Calendar, day: Day): Pick<SeasonOn, 'phase' | 'among' | 'growingDaysLeft' | 'rootDaysLeft'> | undefined => {
  const { climate, climateYear: place, standing, traits: { model } } = calendar;
  if (standing !== 'heated-room' || climate.latitude === undefined || place === undefined || model === 'deciduous' || model === 'evergreen') return undefined;
  const { year, seasonDay } = inGrowingYear(day, place.south);
  if (place.daylengthH[seasonDay]! < growingLightH) return undefined;
  const rest: readonly Phase[] = model === 'dry-deciduous' ? ['dormant', 'leaf-fall'] : ['resting'];
  const left = place.shortDays === undefined ? daysInYear : Math.max(0, dayOfSeason(year, place.shortDays, place.south) - day);
  const days = estimate(Math.max(leastKeptGrowing, left), 0, daysInYear + 1);
  return { phase: 'growing', among: ['growing', ...rest], growingDaysLeft: days, rootDaysLeft: days };
};

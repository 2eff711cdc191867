import type { Calendar } from './calendar.js';
import type { Day } from './day.js';
import { isoOf } from './day.js';
import type { Range, SeasonOn } from './seasonShape.js';

type Air = Pick<SeasonOn, 'nightC' | 'coldNightC' | 'dayC' | 'winterLowC'>;

/** Where frost dates are told it freezes every winter, and somewhat lower than a first white morning, C. */
const frostyC = -2;

/** Temperatures of a day: its own reading where there is one, else the smoothed normals. */
export const airOn = (calendar: Calendar, day: Day, seasonDay: number, sure: boolean, underCover: boolean): Air => {
  const place = calendar.climateYear;
  if (place === undefined) return {};
  // Two frost dates tell when it freezes, not how hard: below a light frost their curve is a guess.
  const guessed = calendar.climate.quality === 'frost-dates';
  const degrees = (value: number, plusMinus: number): Range => (guessed && plusMinus > 0 && value < frostyC
    ? { value, atLeast: value - 25, atMost: value + 8, sure: false }
    : sure
    ? { value, atLeast: value - plusMinus, atMost: value + plusMinus, sure: true }
    : { value, atLeast: value - 25, atMost: value + 25, sure: false });
  const rough = calendar.climate.quality === 'frost-dates' ? 4 : 2;
  const low = place.coldestMonthMinC - 8;
  const winterLowC: Range = guessed ? { value: low, atLeast: low - 25, atMost: Math.min(low + 15, frostyC), sure: false } : degrees(low, rough + 2);
  // What a room or a glass house holds is not told by the air outside.
  if (underCover) return { winterLowC };
  // Texts are compared: to read every date anew for each day of a year is forty times slower.
  const date = calendar.climate.daily === undefined ? undefined : isoOf(day);
  const reading = calendar.climate.daily?.find((one) => one.date === date);
  const nightC = reading?.minC ?? place.minC[seasonDay] ?? 0;
  const dayC = reading?.maxC ?? place.maxC[seasonDay] ?? 0;
  return {
    nightC: degrees(nightC, reading ? 0 : rough),
    coldNightC: degrees(reading ? nightC : nightC - 1.3 * (place.nightSpreadC[seasonDay] ?? 0), reading ? 0 : rough),
    dayC: degrees(dayC, reading ? 0 : rough),
    winterLowC,
  };
};

import { getTimes, times } from 'suncalc';
import type { Day } from './day.js';

/** Sunrise and sunset alone: the other five pairs of suncalc's list, three quarters of its work, are set aside for the call. */
const sunOn = (noon: Date, latitude: number): ReturnType<typeof getTimes> => {
  const others = times.splice(1);
  try {
    return getTimes(noon, latitude, 0);
  } finally {
    times.push(...others);
  }
};

/**
 * Hours from sunrise to sunset.
 *
 * Use it wherever growth is bound to the length of the day. Refraction and the sun's radius count (zenith 90.833 degrees).
 * @param day days since 1970-01-01 UTC
 * @param latitude degrees, south negative; beyond a pole counts as the pole
 * @returns hours, 0 in the polar night and 24 in the polar day
 * Source: suncalc 2.0 (Meeus, Astronomical Algorithms, chapters 15 and 25). Where the sun does not rise or set it gives null
 * and a flag, so the flags are read first.
 * @example daylength(dayOf('2026-06-21'), 51.5) // about 16.6
 */
export const daylength = (day: Day, latitude: number): number => {
  const north = Math.min(90, Math.max(-90, latitude));
  const sun = sunOn(new Date((Math.floor(day) + 0.5) * 86_400_000), north);
  if (sun.alwaysUp === true) return 24;
  if (sun.alwaysDown === true) return 0;
  if (sun.sunrise === null || sun.sunset === null) return 12;
  return (sun.sunset.getTime() - sun.sunrise.getTime()) / 3_600_000;
};

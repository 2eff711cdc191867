/** A day as the hourly curve needs it. */
export interface DayForHours {
  readonly minC: number;
  readonly maxC: number;
  /** Hours from sunrise to sunset. */
  readonly daylengthH: number;
}

/**
 * The 24 hourly temperatures of a day from its extremes and its neighbours': a sine by day, a logarithm by night.
 *
 * Use it to feed hourly chill models from daily extremes. Hours are solar time, 0 to 23.
 * @param before the day before
 * @param today the day wanted
 * @param after the day after
 * Source: Linvill 1990, HortScience 25:14, as in chillR 0.77, with the "+1" kept in both logarithms, so that no hour falls below
 * the minimum. Days without sunrise or sunset take their mean all day.
 */
export const hourlyTemperatures = (before: DayForHours, today: DayForHours, after: DayForHours): readonly number[] => {
  const sunless = (day: DayForHours): boolean => day.daylengthH <= 0 || day.daylengthH >= 24;
  if (sunless(before) || sunless(today) || sunless(after)) {
    return new Array<number>(24).fill((today.minC + today.maxC) / 2);
  }
  const rise = (day: DayForHours): number => 12 - day.daylengthH / 2;
  const set = (day: DayForHours): number => 12 + day.daylengthH / 2;
  const byDay = (day: DayForHours, hour: number): number =>
    day.minC + (day.maxC - day.minC) * Math.sin((Math.PI * (hour - rise(day))) / (day.daylengthH + 4));
  /* What a night turns on is worked out once for all its hours. */
  const nightOf = (evening: DayForHours, morning: DayForHours): ((sinceSet: number) => number) => {
    const atSet = byDay(evening, set(evening));
    const night = 24 - set(evening) + rise(morning);
    const slope = (atSet - morning.minC) / Math.log(night + 1);
    return (sinceSet) => atSet - slope * Math.log(sinceSet + 1);
  };
  const [rises, sets, setBefore] = [rise(today), set(today), set(before)];
  const [early, late] = [nightOf(before, today), nightOf(today, after)];
  return Array.from({ length: 24 }, (_, hour) => {
    if (hour < rises) return early(hour + 24 - setBefore);
    if (hour <= sets) return byDay(today, hour);
    return late(hour - sets);
  });
};

import { seasonCalendar, type SeasonTraits, type Sighting, type Standing } from './calendar.js';
import type { Climate } from './climate.js';
import type { Day } from './day.js';
import { grownDays } from './grownDays.js';
import { type SeasonOn, seasonOn } from './standing.js';

/** The season of one tree at one place, day by day; each day is worked out once. */
export interface SeasonOfDay {
  (day: Day): SeasonOn;
  /** Days of growth between two days; undefined where the model has no reach. */
  readonly grown: (from: Day, to: Day) => number | undefined;
}

export type KeptSeasons = (climate: Climate, traits: SeasonTraits, aroundDay: Day, sightings: readonly Sighting[], standing: Standing) => SeasonOfDay;

/** A collection of trees, each with the fourteen months that are looked ahead: some 60 MB where every one is full. */
const mostCalendars = 200;
const mostDays = 450;

/**
 * Calendars that are remembered, the one asked for longest ago forgotten first.
 *
 * Use it where the same trees are asked about again and again: windows and years ask hundreds of days of one calendar.
 */
export const keptSeasons = (): KeptSeasons => {
  const kept = new Map<string, SeasonOfDay>();
  const numbers = new WeakMap<Climate, number>();
  const texts = new WeakMap<SeasonTraits, string>();
  let next = 0;
  return (climate, traits, aroundDay, sightings, standing) => {
    let number = numbers.get(climate);
    if (number === undefined) {
      number = next++;
      numbers.set(climate, number);
    }
    const text = texts.get(traits) ?? JSON.stringify(traits);
    texts.set(traits, text);
    const key = `${number}|${standing}|${text}|${sightings.map((one) => `${one.phase}${one.day}`).sort().join()}`;
    let season = kept.get(key);
    kept.delete(key);
    if (season === undefined) {
      const calendar = seasonCalendar(climate, traits, aroundDay, sightings, standing);
      const days = new Map<Day, SeasonOn>();
      const dayByDay = (day: Day): SeasonOn => {
        const before = days.get(day);
        if (before !== undefined) return before;
        if (days.size >= mostDays) days.clear();
        const on = seasonOn(calendar, day);
        days.set(day, on);
        return on;
      };
      season = Object.assign(dayByDay, { grown: (from: Day, to: Day) => grownDays(calendar, from, to) });
    }
    kept.set(key, season);
    const oldest = kept.keys().next();
    if (kept.size > mostCalendars && oldest.done !== true) kept.delete(oldest.value);
    return season;
  };
};

import type { Phase, SeasonTraits } from './seasonTraits.js';
import type { ClimateYear } from './climateYear.js';
import { dayReaching } from './springForcing.js';
import { daysInYear } from './yearDay.js';

/** A phase and the season day on which it begins. */
export interface Step { readonly phase: Phase; readonly from: number; readonly plusMinusDays: number; readonly half: 'spring' | 'autumn' }

/** The turning points of one growing year, in season days (from midwinter on; up to a few weeks beyond the next midwinter). */
export interface TurningPoints {
  /** In order; before the first step the last step of the year before holds. Empty where the model has no reach. */
  readonly steps: readonly Step[];
  /** First day of growth: bud swell, or warmth enough. Undefined where growth never stops or the model has no reach. */
  readonly start: number | undefined;
  readonly leafOut: number | undefined;
  /** Last day of growth; undefined where it never ends or the model has no reach. */
  readonly end: number | undefined;
  /** Growth goes on all year. */
  readonly always: boolean;
  readonly notes: readonly string[];
}

/** Coldest smoothed mean above which an obligate sleeper gets no winter, C. Leaf-out models give nonsense there. */
const noWinterC = 15;

/** Where the sum of spring units stands between bud swell and leaf-out when buds break (common practice: about a fortnight before leaf-out). */
const burstUnits = (budSwell: number, leafOut: number): number => budSwell + Math.min(60, 0.45 * (leafOut - budSwell));

/** Leaves reach three quarters of their size 15 to 22 days after bud break (Harvard Forest HF003, eight species): 18 days. */
const leafingDays = 18;

/** From first falling leaf to a bare tree, days (common practice). */
const fallingDays = 28;

const defaults = {
  deciduous: { budSwell: 4, leafOut: 100, hardens: 45, turns: 0, leafFall: 12 },
  evergreen: { budSwell: 4, leafOut: 150, hardens: 50, turns: 14, leafFall: 0 },
} as const;

const none = (note: string): TurningPoints =>
  ({ steps: [], start: undefined, leafOut: undefined, end: undefined, always: false, notes: [note] });

const lastAbove = (values: readonly number[], limit: number): number => values.findLastIndex((value) => value >= limit);

/** First and last season day of the warm run that holds the warmest day; undefined where no day is warm, `always` where all are. */
const warmRun = (values: readonly number[], limit: number): { readonly from: number; readonly to: number } | 'always' | undefined => {
  const warmest = values.indexOf(Math.max(...values));
  if ((values[warmest] ?? 0) < limit) return undefined;
  if (Math.min(...values) >= limit) return 'always';
  let from = warmest;
  while (from > warmest - daysInYear && (values[(from - 1 + daysInYear) % daysInYear] ?? 0) >= limit) from -= 1;
  let to = warmest;
  while (to < warmest + daysInYear && (values[(to + 1) % daysInYear] ?? 0) >= limit) to += 1;
  return { from, to };
};

/** Last day of growth of a temperate tree: the day before the first frost or before days fall under 11 h, whichever is earlier. */
const temperateEnd = (place: ClimateYear): number | undefined => {
  // A first frost after midwinter belongs to the winter that then ends.
  const frost = typeof place.frost === 'object' ? (place.frost.first > place.frost.last ? place.frost.first : place.frost.first + daysInYear) : undefined;
  const ends = [frost, place.shortDays].filter((end) => end !== undefined);
  return ends.length === 0 ? undefined : Math.min(...ends);
};

/** Holds steps in order, each at least a day after the one before. */
const inOrder = (steps: readonly Step[], latest: number): readonly Step[] => {
  let at = -1;
  return steps.map((step) => {
    at = Math.min(Math.max(step.from, at + 1), latest);
    return { ...step, from: at };
  });
};

/** Spring dates from a year's spring units. */
export const springDates = (forcing: readonly number[], traits: SeasonTraits):
  { readonly budSwell: number; readonly budBurst: number; readonly leafOut: number } | undefined => {
  const usual = traits.model === 'evergreen' ? defaults.evergreen : defaults.deciduous;
  const leafUnits = traits.leafOut ?? usual.leafOut;
  const swellUnits = Math.min(traits.budSwell ?? usual.budSwell, leafUnits * 0.5);
  const budSwell = dayReaching(forcing, swellUnits);
  const budBurst = dayReaching(forcing, burstUnits(swellUnits, leafUnits));
  const leafOut = dayReaching(forcing, leafUnits);
  return budSwell === undefined || budBurst === undefined || leafOut === undefined || leafOut > 230 ? undefined : { budSwell, budBurst, leafOut };
};

const temperate = (place: ClimateYear, traits: SeasonTraits, plusMinusDays: number): TurningPoints => {
  const evergreen = traits.model === 'evergreen';
  if (place.coldestMeanC > noWinterC) {
    return (traits.restNeed ?? 'obligate') === 'obligate' ? none('no-winter-here') : mild(place, traits, plusMinusDays);
  }
  const usual = evergreen ? defaults.evergreen : defaults.deciduous;
  const spring = springDates(place.forcing, traits);
  if (spring === undefined) return none('no-summer-here');
  const warmWinter = place.coldestMeanC > 10;
  const coldDays = place.meanC.filter((mean) => mean < (traits.warmestC ?? 10)).length;
  const tooShort = traits.coldWeeks !== undefined && coldDays < traits.coldWeeks * 7;
  const loose = plusMinusDays + (warmWinter || tooShort ? 10 : 0);
  const step = (phase: Phase, from: number, more: number, half: 'spring' | 'autumn'): Step => ({ phase, from, plusMinusDays: loose + more, half });
  const hardened = spring.leafOut + (traits.hardens ?? usual.hardens);
  const springSteps = [
    step('bud-swell', spring.budSwell, 0, 'spring'),
    step('bud-burst', spring.budBurst, 0, 'spring'),
    step('leafing-out', spring.leafOut, 0, 'spring'),
    step('extending', Math.min(spring.leafOut + leafingDays, hardened - 1), 2, 'spring'),
    step('hardened-off', hardened, 4, 'spring'),
  ];
  const turning = place.autumn + (traits.turns ?? usual.turns);
  const falling = turning + (traits.leafFall ?? defaults.deciduous.leafFall);
  const autumnSteps = evergreen
    ? [step('resting', turning, 4, 'autumn')]
    : [step('turning', turning, 4, 'autumn'), step('leaf-fall', falling, 4, 'autumn'), step('dormant', falling + fallingDays, 4, 'autumn')];
  const steps = inOrder([...springSteps, ...autumnSteps].map((one) => ({ ...one, from: Math.round(one.from) })), daysInYear + spring.budSwell - 1);
  return {
    steps,
    start: spring.budSwell,
    leafOut: spring.leafOut,
    end: temperateEnd(place) ?? steps.find((one) => one.half === 'autumn')?.from,
    always: false,
    notes: [...(warmWinter ? ['mild-winter'] : []), ...(tooShort ? ['rest-too-short'] : [])],
  };
};

const yearRound = (notes: readonly string[]): TurningPoints => ({
  steps: [{ phase: 'growing', from: 0, plusMinusDays: 0, half: 'spring' }],
  start: undefined, leafOut: undefined, end: undefined, always: true, notes,
});

/** No day is warm enough to grow: at rest all year, as a place a shade warmer is for all but a few days. */
const restAllYear = (phase: Phase, plusMinusDays: number): TurningPoints => ({
  steps: [{ phase, from: 0, plusMinusDays, half: 'autumn' }],
  start: undefined, leafOut: undefined, end: undefined, always: false, notes: ['no-summer-here'],
});

/** Growth from the first warm day to the last; rest between. */
const warmSeason = (from: number, to: number, plusMinusDays: number, notes: readonly string[], rest: readonly Phase[] = ['resting']): TurningPoints => {
  const first = Math.max(0, Math.round(from));
  const after = Math.min(Math.max(Math.round(to), first) + 1, daysInYear + first - 1);
  const steps: Step[] = [{ phase: 'growing', from: first, plusMinusDays, half: 'spring' }];
  rest.forEach((phase, i) => steps.push({ phase, from: after + i * fallingDays, plusMinusDays: plusMinusDays + 4, half: 'autumn' }));
  return { steps: inOrder(steps, daysInYear + first - 1), start: first, leafOut: first, end: after - 1, always: false, notes };
};

/** Olive, myrtle and their like: growth begins when the mean passes 10 C and ends with frost or short days. */
const mild = (place: ClimateYear, traits: SeasonTraits, plusMinusDays: number): TurningPoints => {
  const notes = traits.restSeason === 'summer' ? ['summer-rest'] : [];
  const warm = warmRun(place.meanC, 10);
  if (warm === undefined) return restAllYear('resting', plusMinusDays);
  if (warm === 'always' && (place.coldestMeanC > noWinterC || place.shortDays === undefined)) return yearRound(notes);
  // Where no month is too cold the lengthening day (11 h) begins the season.
  const from = warm === 'always' ? Math.max(0, place.daylengthH.findIndex((hours) => hours >= 11)) : warm.from;
  const to = temperateEnd(place) ?? (warm === 'always' ? lastAbove(place.daylengthH, 11) : warm.to);
  const season = warmSeason(from, to, plusMinusDays, notes);
  return traits.restSeason === 'summer' ? withSummerRest(place, season, plusMinusDays) : season;
};

/** Mean maximum above which trees of summer-dry countries stand still, C (common practice; watering shortens the rest). */
const summerRestC = 30;

/** Lays a rest over the hot weeks. The season's end stays: growth comes back in early autumn. */
const withSummerRest = (place: ClimateYear, season: TurningPoints, plusMinusDays: number): TurningPoints => {
  const hot = warmRun(place.maxC, summerRestC);
  const [first, last] = season.steps;
  if (hot === undefined || hot === 'always' || first === undefined || last === undefined || hot.from <= first.from || hot.to + 1 >= last.from) return season;
  const rest: Step = { phase: 'resting', from: hot.from, plusMinusDays: plusMinusDays + 4, half: 'spring' };
  const again: Step = { phase: 'growing', from: hot.to + 1, plusMinusDays: plusMinusDays + 4, half: 'spring' };
  return { ...season, steps: [first, rest, again, last] };
};

/** Warm days make up for nights a few degrees short of what the species asks, C (common practice: figs grow outdoors where summer nights are cool). */
const dayMakesUpC = 3;

/** Growth while nights stay above what the species asks, or fall short by little while the whole day is well above it. */
const nightBound = (place: ClimateYear, traits: SeasonTraits, plusMinusDays: number, rest: readonly Phase[]): TurningPoints => {
  const warmth = place.minC.map((low, i) => Math.min(low + dayMakesUpC, (place.meanC[i] ?? low) - dayMakesUpC));
  const warm = warmRun(warmth, traits.minNightC ?? (traits.model === 'tropical' ? 12 : 10));
  if (warm === undefined) return restAllYear(rest.at(-1) ?? 'resting', plusMinusDays);
  if (warm === 'always') {
    return traits.model === 'dry-deciduous' || traits.restSeason === 'dry' ? none('dry-season-unknown') : yearRound([]);
  }
  return warmSeason(warm.from, warm.to, plusMinusDays, [], rest);
};

/**
 * The turning points of an ordinary year for a species at a place.
 *
 * Use it through `seasonCalendar`. Defaults where a trait is missing: deciduous bud swell at 4 spring units, leaf-out at 100, hardened 45 days later, turning on the autumn
 * date, leaf fall 12 days after turning; evergreen 4, 150, 50 days, rest 14 days after the autumn date; nights of 12 C (tropical) or 10 C (dry-deciduous).
 * @param place the year that the climate gives
 * @param traits the species' season traits
 * @param plusMinusDays error of the climate's spring dates, days
 */
export const turningPoints = (place: ClimateYear, traits: SeasonTraits, plusMinusDays: number): TurningPoints => {
  switch (traits.model) {
    case 'deciduous':
    case 'evergreen': return temperate(place, traits, plusMinusDays);
    case 'mild-evergreen': return mild(place, traits, plusMinusDays);
    case 'tropical': return nightBound(place, traits, plusMinusDays, ['resting']);
    case 'dry-deciduous': return nightBound(place, traits, plusMinusDays, ['leaf-fall', 'dormant']);
  }
};

import { dayOfSeason, inGrowingYear } from './growingYear.js';
import type { Phase, Sighting } from './seasonTraits.js';
import type { Step, TurningPoints } from './turningPoints.js';

/** How far a sighting lies from the model, and from which step on. */
interface Fit { readonly year: number; readonly index: number; readonly shift: number; readonly half: Step['half'] }

/** A sighting farther off than this is of another kind (forced, moved, defoliated): it tells the phase, not the year. */
const farthestDays = 60;

/** What a phase is called in a model that has no such phase. */
const alike: Readonly<Partial<Record<Phase, Phase>>> = { dormant: 'resting', resting: 'dormant' };

/** The step (and year) whose span lies nearest to the sighting. */
const nearestStep = (
  seen: Sighting, pointsOf: (year: number) => TurningPoints, south: boolean,
): Fit | undefined => {
  const { year: around } = inGrowingYear(seen.day, south);
  let best: Fit | undefined;
  for (const year of [around - 1, around, around + 1]) {
    const { steps } = pointsOf(year);
    steps.forEach((step, index) => {
      if (step.phase !== seen.phase && alike[seen.phase] !== step.phase) return;
      const from = dayOfSeason(year, step.from, south);
      const after = steps[index + 1];
      const first = pointsOf(year + 1).steps[0];
      const next = after ? dayOfSeason(year, after.from, south) : dayOfSeason(year + 1, first?.from ?? 0, south);
      const early = seen.day < from;
      const late = seen.day >= next;
      const shift = early ? seen.day - from : late ? seen.day + 1 - next : 0;
      const moves = early || !late ? { year, index, half: step.half }
        : after ? { year, index: index + 1, half: after.half } : { year: year + 1, index: 0, half: first?.half ?? 'spring' };
      if (best === undefined || Math.abs(shift) < Math.abs(best.shift)) best = { ...moves, shift };
    });
  }
  return best;
};

/** Moves a step and those after it in the same half of the year; what would be overtaken gives way. */
const moveFrom = (points: TurningPoints, fit: Fit, plusMinusDays: number): TurningPoints => {
  let steps = points.steps.map((step, index) => (step.half !== fit.half || index < fit.index ? step
    : { ...step, from: step.from + fit.shift, plusMinusDays: Math.min(step.plusMinusDays, plusMinusDays) }));
  const anchor = steps[fit.index]?.from ?? 0;
  let floor = anchor;
  steps = steps.map((step, index) => {
    if (index < fit.index) return { ...step, from: Math.min(step.from, anchor) };
    floor = Math.max(floor, step.from);
    return { ...step, from: floor };
  });
  const at = (phase: Phase, usual: number | undefined): number | undefined =>
    steps.find((step) => step.phase === phase)?.from ?? usual;
  // Colour seen early ends the season early; colour seen late does not undo frost or short days.
  const colour = fit.half === 'autumn' && fit.shift < 0 ? steps.find((step) => step.half === 'autumn')?.from : undefined;
  return {
    ...points,
    steps,
    start: points.start === undefined ? undefined : (steps[0]?.from ?? points.start),
    leafOut: points.leafOut === undefined ? undefined : at('leafing-out', steps[0]?.from),
    end: points.end === undefined ? undefined : Math.min(points.end, colour ?? points.end),
  };
};

/** Error that is left once a boundary of the same half has been seen, days: how stable gaps between species' and stages' dates are from year to year. */
const seenPlusMinus = 7;

/**
 * The ordinary year and the moved years after what was seen on the tree.
 *
 * Sightings of one year move its later turning points of the same half (spring to hardening, or autumn); never frost. Two or more calibrate the tree for the years that
 * nobody has seen, by their mean with one more counted as no shift.
 * @param model the ordinary year
 * @param read years that daily readings have moved already
 * @param sightings in order of time
 * @param south hemisphere
 */
export const movedBySightings = (
  model: TurningPoints, read: Readonly<Record<number, TurningPoints>>, sightings: readonly Sighting[], south: boolean,
): { readonly ordinary: TurningPoints; readonly moved: Readonly<Record<number, TurningPoints>>; readonly notes: readonly string[] } => {
  const plain = (year: number): TurningPoints => read[year] ?? model;
  const fits = sightings.flatMap((seen) => {
    const fit = nearestStep(seen, plain, south);
    return fit === undefined ? [] : [{ seen, fit }];
  });
  const near = fits.filter(({ fit }) => Math.abs(fit.shift) <= farthestDays);
  const notes = fits.length < sightings.length || near.length < fits.length ? ['sighting-far-from-model'] : [];
  let ordinary = model;
  for (const half of ['spring', 'autumn'] as const) {
    const told = near.filter(({ fit }) => fit.half === half);
    if (told.length < 2) continue;
    const shift = Math.round(told.reduce((sum, { fit }) => sum + fit.shift, 0) / (told.length + 1));
    const index = ordinary.steps.findIndex((step) => step.half === half);
    ordinary = moveFrom(ordinary, { year: 0, index, shift, half }, seenPlusMinus);
    if (shift !== 0) notes.push('calibrated-by-sightings');
  }
  const moved: Record<number, TurningPoints> = { ...read };
  for (const { seen } of near) {
    const now = nearestStep(seen, (year) => moved[year] ?? ordinary, south);
    if (now === undefined) continue;
    moved[now.year] = moveFrom(moved[now.year] ?? ordinary, now, seenPlusMinus);
  }
  return { ordinary, moved, notes: [...new Set(notes)] };
};

import type { Phase, SeasonTraits } from './seasonTraits.js';
import type { Range, SeasonOn } from './seasonShape.js';

const bounds = (value: number, atLeast: number, atMost: number): Range => ({ value, atLeast, atMost, sure: value === atLeast && value === atMost });

/** Growing days that a seen phase alone leaves (practice): a season that has just begun holds 120 days at least. */
const growingDays = (phase: Phase): Range | undefined => {
  switch (phase) {
    case 'bud-swell':
    case 'bud-burst':
    case 'leafing-out': return bounds(180, 120, 300);
    case 'extending': return bounds(120, 60, 270);
    case 'turning':
    case 'leaf-fall': return bounds(0, 0, 0);
    case 'dormant':
    case 'hardened-off':
    case 'resting':
    case 'growing': return undefined;
  }
};

/** Roots work on for some weeks after the leaves have turned, as long as the soil is warm. */
const rootDays = (phase: Phase): Range | undefined =>
  phase === 'turning' ? bounds(30, 0, 90) : phase === 'leaf-fall' ? bounds(15, 0, 60) : growingDays(phase);

/**
 * What a seen phase alone tells, where neither place nor date is known.
 *
 * Use it when all that a grower gives is what the buds do. Only bounds; no dates, no temperatures.
 * @param _traits the species' season traits; no bound hangs on them yet
 * @param phase what is seen
 */
export const seasonFromSighting = (_traits: SeasonTraits, phase: Phase): SeasonOn => {
  const growing = growingDays(phase);
  const roots = rootDays(phase);
  return {
    phase,
    phaseFrom: 'seen',
    phaseSure: true,
    ...(growing === undefined ? {} : { growingDaysLeft: growing }),
    ...(roots === undefined ? {} : { rootDaysLeft: roots }),
    ...(phase === 'leafing-out' ? { daysSinceLeafOut: bounds(9, 0, 30) } : {}),
    plusMinusDays: 0,
    notes: ['phase-seen-only'],
  };
};

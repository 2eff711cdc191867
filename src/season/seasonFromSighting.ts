import type { Phase, Standing } from './seasonTraits.js';
import type { Range, SeasonOn } from './seasonShape.js';
import { isUnderCover } from './isUnderCover.js';
import { estimate } from './range.js';
import { daysInYear } from './yearDay.js';

const most = daysInYear + 1;

/**
 * Growing days that a seen phase alone leaves outdoors. The least is what the model gives at the end of the phase over all bundled places and all species (98 of 100 of them
 * and more; tests/season); the usual value is practice.
 */
const growingDays = (phase: Phase): Range | undefined => {
  switch (phase) {
    case 'bud-swell': return estimate(180, 95, most);
    case 'bud-burst': return estimate(180, 80, most);
    case 'leafing-out': return estimate(160, 65, most);
    case 'extending': return estimate(120, 30, most);
    case 'turning':
    case 'leaf-fall': return estimate(0, 0, 0);
    case 'dormant':
    case 'hardened-off':
    case 'resting':
    case 'growing': return undefined;
  }
};

/** Roots work on for some weeks after the leaves have turned, as long as the soil is warm. */
const rootDays = (phase: Phase): Range | undefined =>
  phase === 'turning' ? estimate(30, 0, most) : phase === 'leaf-fall' ? estimate(15, 0, most) : growingDays(phase);

/**
 * What a seen phase alone tells, where neither place nor date is known.
 *
 * Use it when all that a grower gives is what the buds do. Only bounds; no dates, no temperatures.
 * @param phase what is seen
 * @param standing where the tree stands: what grows under cover may stop with the short days outside, whenever they come
 */
export const seasonFromSighting = (phase: Phase, standing: Standing): SeasonOn => {
  const outdoors = growingDays(phase);
  const growing = outdoors !== undefined && isUnderCover(standing) ? estimate(outdoors.value, 0, outdoors.atMost) : outdoors;
  const roots = rootDays(phase);
  return {
    phase,
    phaseFrom: 'seen',
    phaseSure: true,
    ...(growing === undefined ? {} : { growingDaysLeft: growing }),
    ...(roots === undefined ? {} : { rootDaysLeft: roots }),
    ...(phase === 'leafing-out' ? { daysSinceLeafOut: estimate(9, 0, 30) } : {}),
    plusMinusDays: 0,
    notes: ['phase-seen-only'],
  };
};

import type { Derive } from './asked.js';
import { unknown } from './factValue.js';
import { workedNumber } from './workedNumber.js';

/** Facts of how much wood the tree adds. */
export const growthFacts: Readonly<Record<string, Derive>> = {
  /* Measured thickening counts; without it the usual ring of a tree of this pace in open ground, as growing conditions and vigour leave of it. */
  'tree.ringMm': (read, asked) => {
    const { ringMm, growing, vigour } = asked.knowledge.growing;
    const thickened = asked.proposal.tree.trunk?.thickenedMm;
    if (thickened !== undefined) return { state: 'known', value: thickened / 2, from: 'given' };
    const [pace, place, vigorous] = [read('species.growth.pace'), read('tree.growing'), read('tree.vigour')];
    if (pace.value === undefined) return unknown();
    const factor = { ...place, value: (growing[place.value as string] ?? 1) * (vigour[vigorous.value as string] ?? 1) };
    return workedNumber([{ ...pace, value: ringMm[pace.value as string] ?? 0 }, factor], (ring, share) => ring * share);
  },
};

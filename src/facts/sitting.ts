import type { Derive } from './asked.js';
import { ownShares, thousandth } from './ownShares.js';
import { hardJobs, sittingPoints } from './sittingPoints.js';
import type { Strain } from './strain.js';
import { workOut } from './workOut.js';

const figure = (of: (...sitting: Parameters<typeof sittingPoints>) => number): Derive => (read, asked) =>
  workOut([read('work.strain')], 'worked-out', (strain) => of({ ops: [asked.operation.id], strains: [strain as Strain], foliageShare: 0, cutAreaShare: 0 }, asked));

const share = (fact: keyof typeof ownShares): Derive => (read, asked) => {
  const { own, atMost } = ownShares[fact];
  const taken = own(read, asked);
  return { ...taken, value: Math.min(atMost, thousandth(taken.value as number)) };
};

/** Facts of a sitting that is the work asked about, and no more. */
export const sittingFacts: Readonly<Record<string, Derive>> = {
  'sitting.hardOperations': figure(hardJobs),
  'sitting.strain': figure(sittingPoints),
  'sitting.foliageShare': share('sitting.foliageShare'),
  'sitting.cutAreaShare': share('sitting.cutAreaShare'),
};

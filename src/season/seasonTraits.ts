import type { Day } from './day.js';

/** Where a tree stands in its year. */
export type Phase = 'dormant' | 'bud-swell' | 'bud-burst' | 'leafing-out' | 'extending' | 'hardened-off' | 'turning' | 'leaf-fall' | 'resting' | 'growing';

/** Where a tree stands. */
export type Standing = 'outdoors' | 'cold-frame' | 'greenhouse' | 'cool-room' | 'heated-room';

/** What the season model needs of a species; what is missing takes the default of its model (turningPoints.ts). */
export interface SeasonTraits {
  readonly model: 'deciduous' | 'evergreen' | 'mild-evergreen' | 'tropical' | 'dry-deciduous';
  /** Spring units (springForcing.ts) at which buds swell. */
  readonly budSwell?: number;
  /** Spring units at which half the buds show leaves or needles. */
  readonly leafOut?: number;
  /** Days from leaf-out until the first flush has hardened. */
  readonly hardens?: number;
  /** Days from the climate's autumn date (autumnDate.ts) to colour; for evergreens to rest. */
  readonly turns?: number;
  /** Days from colour to the first falling leaves. */
  readonly leafFall?: number;
  /** Mean minimum above which a tropical tree grows, C. */
  readonly minNightC?: number;
  readonly restNeed?: 'obligate' | 'optional' | 'none';
  readonly restSeason?: 'winter' | 'summer' | 'dry' | 'none';
  /** Weeks of cold rest that it needs. */
  readonly coldWeeks?: number;
  /** Warmest mean at which it still rests, C. */
  readonly warmestC?: number;
  readonly flushes?: 'one' | 'several' | 'continuous';
}

/** A phase seen on the tree. */
export interface Sighting { readonly phase: Phase; readonly day: Day }

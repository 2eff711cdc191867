import type { Proposal } from '../contract/types.generated.js';
import type { Measure } from './measure.js';

/** A structure as its owner tells it: `tree.structure` of a proposal. */
export type ToldStructure = NonNullable<Proposal['tree']['structure']>;
type ToldBranch = NonNullable<ToldStructure['branches']>[number];

/** One point of a trunk: its height above the soil, its diameter, and how far its middle stands to the viewer's right and to the back. */
export interface TrunkPoint {
  readonly heightMm: number;
  readonly diameterMm: number;
  readonly sideMm: number;
  readonly backMm: number;
}

/** A trunk, its points from the soil upward. */
export interface Trunk {
  readonly id: string;
  /** The trunk that it leaves, and at what height; absent where it stands on its own. */
  readonly from?: string;
  readonly atMm?: number;
  readonly points: readonly TrunkPoint[];
  /** Whether its points were told, or a cone of its diameter and the tree's height stands in for them. */
  readonly pointsTold: boolean;
  /** Whether sideways or backward offsets were told: without them its line is taken to be straight, and its curves are unknown. */
  readonly lineTold: boolean;
}

export type Role = NonNullable<ToldBranch['role']>;
export type Fault = NonNullable<ToldBranch['faults']>[number];

/** A branch, and what could be worked out of it. */
export interface Branch {
  readonly id: string;
  /** The trunk or branch that it grows from. */
  readonly from: string;
  /** The trunk that it grows from, or that its parents grow from. */
  readonly trunkId: string;
  /** Whether it grows from the trunk itself. */
  readonly onTrunk: boolean;
  readonly heightMm: number;
  /** Degrees from the front, clockwise seen from above, 0 to below 360. */
  readonly azimuthDeg?: number;
  readonly diameterMm?: Measure;
  /** Its diameter over that of what bears it, just above the joint. */
  readonly aspectRatio?: Measure;
  /** Share of the tree's foliage, with all that grows from it. */
  readonly foliageShare?: Measure;
  readonly lengthMm?: number;
  readonly pitchDeg?: number;
  readonly foliageBackToMm?: number;
  /** Where buds or side shoots stand, from the trunk outward; empty where none was told. */
  readonly budsAtMm: readonly number[];
  readonly padMm?: number;
  readonly dead: boolean;
  readonly role: Role;
  readonly faults: readonly Fault[];
}

/** A wound on the main trunk. */
export interface Wound {
  readonly heightMm: number;
  readonly azimuthDeg?: number;
  readonly widthMm: number;
  readonly closed: boolean;
}

/** A tree as it is built: what its owner measured, and what follows from it. */
export interface Structure {
  /** The main trunk first. */
  readonly trunks: readonly Trunk[];
  /** From the soil upward; those of one height by id. */
  readonly branches: readonly Branch[];
  readonly wounds: readonly Wound[];
  /** Diameter of the main trunk above the roots. */
  readonly baseMm?: Measure;
  readonly heightMm?: Measure;
}

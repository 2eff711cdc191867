/** What `keepers` weighs when it chooses branches for an aim: shared/aims.yaml. A cost of 1 is a fault that most growers would mend if it cost them nothing. */

interface Weighed {
  readonly weight: number;
  readonly sources: readonly string[];
}

/** The terms of a choice, each with its weight and its targets; angles in degrees, heights as shares of the tree's. */
export interface Terms {
  readonly thick: Weighed & { readonly from: number; readonly full: number };
  readonly front: Weighed & { readonly withinDeg: number; readonly belowShare: number };
  readonly 'inside-curve': Weighed;
  readonly 'between-trunks': Weighed & { readonly withinDeg: number };
  readonly pitch: Weighed & { readonly fromDeg: number; readonly toDeg: number; readonly spareDeg: number };
  readonly low: Weighed & { readonly belowShare: number };
  readonly side: Weighed;
  readonly bar: Weighed;
  readonly crowded: Weighed;
  readonly over: Weighed & { readonly withinDeg: number; readonly gapShare: number };
  readonly crossing: Weighed & { readonly inView: number };
  readonly parallel: Weighed;
  readonly foliage: Weighed;
  readonly wound: Weighed;
  readonly 'empty-side': Weighed & { readonly fromDeg: number; readonly spareDeg: number };
  readonly high: Weighed & { readonly aboveShare: number; readonly spareShare: number };
  readonly 'first-side': Weighed;
  readonly many: Weighed & { readonly most: number };
  readonly few: Weighed & { readonly least: number };
  readonly trunks: Weighed & { readonly least: number; readonly most: number };
  readonly tall: Weighed;
  readonly stump: Weighed;
}

export type Term = keyof Terms;

/** A style of the trade, and where its terms differ. */
export interface Aim {
  readonly label: string;
  readonly terms: { readonly [Each in Term]?: Partial<Omit<Terms[Each], 'sources'>> };
}

export interface Aims {
  /** Sets that cost no more than this above the best are its equals. */
  readonly equal: number;
  /** How many sets are told at most. */
  readonly told: number;
  /** Over how many years the work may be spread. */
  readonly years: number;
  /** Days that a tree is left to grow between two sittings. */
  readonly daysApart: number;
  readonly terms: Terms;
  readonly styles: Readonly<Record<string, Aim>>;
}

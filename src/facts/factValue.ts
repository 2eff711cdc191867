import type { Value } from '../knowledge/knowledge.js';

/** The bounds within which a number lies. */
export interface Span {
  readonly atLeast: number;
  readonly atMost: number;
}

/** How a fact is known. An estimated fact has a rough value; `among` holds the bounds that are sure whatever the estimate is worth. */
export type FactState = 'known' | 'estimated' | 'assumed' | 'unknown';

/** A fact of one proposal: its value where there is one, and what it may be where that is not sure. */
export interface FactValue {
  readonly state: FactState;
  readonly value?: Value;
  /** Values that it may have (a choice), or bounds (a number); absent where it may be anything. */
  readonly among?: readonly Value[] | Span;
  /** Where it comes from: given, worked-out, season, log, assumed, or the level of a trait. */
  readonly from: string;
  readonly plusMinus?: number;
}

export const known = (value: Value, from: string): FactValue => ({ state: 'known', value, from });
export const assumed = (value: Value): FactValue => ({ state: 'assumed', value, from: 'assumed' });
export const unknown = (among?: readonly Value[] | Span): FactValue => (among === undefined ? { state: 'unknown', from: 'unknown' } : { state: 'unknown', among, from: 'unknown' });

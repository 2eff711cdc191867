/** How a number is known: measured, worked out from what was measured, or estimated by a rough model. */
export type Certainty = 'told' | 'worked-out' | 'estimated';

/** A number with the bounds within which it lies, and how it is known. */
export interface Measure {
  readonly value: number;
  readonly atLeast: number;
  readonly atMost: number;
  readonly certainty: Certainty;
}

/** A number that was told as it stands. */
export const told = (value: number): Measure => ({ value, atLeast: value, atMost: value, certainty: 'told' });

const lessSure = (a: Certainty, b: Certainty): Certainty => (a === 'estimated' || b === 'estimated' ? 'estimated' : 'worked-out');

/** One measure over another: the ratio of the values, and the widest bounds. */
export const over = (one: Measure, other: Measure): Measure | undefined =>
  other.value <= 0 ? undefined : { value: one.value / other.value, atLeast: one.atLeast / other.atMost, atMost: one.atMost / Math.max(other.atLeast, 0.001), certainty: lessSure(one.certainty, other.certainty) };

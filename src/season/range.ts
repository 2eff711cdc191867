import type { Range } from './seasonShape.js';
import { daysInYear } from './yearDay.js';

/** A known count with its error; never below 0 nor beyond `most`. */
export const known = (value: number, plusMinus: number, most = daysInYear + 1): Range => ({
  value: Math.min(most, value),
  atLeast: Math.min(most, Math.max(0, value - plusMinus)),
  atMost: Math.min(most, Math.max(0, value + plusMinus)),
  sure: true,
});

/** An estimate within bounds that hold whatever it is worth; bounds that meet make it certain. */
export const estimate = (value: number, atLeast: number, atMost: number): Range =>
  ({ value: Math.min(atMost, Math.max(atLeast, value)), atLeast, atMost, sure: atLeast === atMost });

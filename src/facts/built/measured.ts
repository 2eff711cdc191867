import type { Measure } from '../../structure/measure.js';
import { type FactValue, known } from '../factValue.js';

const fine = (value: number): number => Math.round(value * 1000) / 1000;

/** A measure of a structure as a fact: an estimate keeps the bounds that it lies within. */
export const measured = ({ value, atLeast, atMost, certainty }: Measure): FactValue =>
  certainty === 'estimated' ? { state: 'estimated', value: fine(value), among: { atLeast: fine(atLeast), atMost: fine(atMost) }, from: 'estimated' } : known(fine(value), 'worked-out');

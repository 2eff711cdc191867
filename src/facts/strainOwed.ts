import type { Derive } from './asked.js';
import { type FactValue, known, type Span, unknown } from './factValue.js';

/** Points of strain, without false exactness. */
export const tenth = (value: number): number => Math.round(value * 10) / 10;

/** What a number may be, at least and at most. */
const spanOf = ({ value, among }: FactValue): Span => {
  if (Array.isArray(among)) return { atLeast: Math.min(...(among as readonly number[])), atMost: Math.max(...(among as readonly number[])) };
  return among === undefined ? { atLeast: value as number, atMost: value as number } : (among as Span);
};

/** Two numbers added, each as well known as it is. */
const addUp = (one: FactValue, other: FactValue): FactValue => {
  const [a, b] = [spanOf(one), spanOf(other)];
  const among = { atLeast: tenth(a.atLeast + b.atLeast), atMost: tenth(a.atMost + b.atMost) };
  if (one.value === undefined || other.value === undefined) return unknown(among);
  const value = tenth((one.value as number) + (other.value as number));
  /* An estimate without bounds may turn out to be anything. */
  if ([one, other].some((each) => each.state === 'estimated' && each.among === undefined)) return { state: 'estimated', value, from: 'estimated' };
  if (among.atLeast !== among.atMost) return { state: 'estimated', value, among, from: 'estimated' };
  return { state: one.state === 'assumed' || other.state === 'assumed' ? 'assumed' : 'known', value, from: 'worked-out' };
};

/** Facts of strain that is owed: for earlier work, where none is told, and with this sitting. */
export const strainOwedFacts: Readonly<Record<string, Derive>> = {
  'history.strain': () => known(0, 'log'),
  'sitting.strainSum': (read) => addUp(read('sitting.strain'), read('history.strain')),
};

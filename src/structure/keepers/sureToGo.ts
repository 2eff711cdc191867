import type { Weighing } from './weighing.js';
import { bit, has } from './bits.js';

/** Of what is gone that which is sure to be a cut or part of one: a choice whose parent is undecided may yet go with it. */
export const sureToGo = ({ parent }: Pick<Weighing, 'parent'>, gone: number, kept: number): number => {
  let sure = gone;
  for (let i = 0; i < parent.length; i++) if (parent[i] !== undefined && has(gone, i) && !has(gone + kept, parent[i]!)) sure -= bit(i);
  return sure;
};

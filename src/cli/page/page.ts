import type { Units } from './inUnits.js';

/** What a text for people is printed on: how wide, and in which units. */
export interface Page {
  readonly width: number;
  readonly units: Units;
}

/** The page of this terminal, no wider than reads well; 80 columns where there is none. */
export const pageOf = ({ units }: { readonly units: Units }): Page => ({ width: Math.min(100, process.stdout.columns ?? 80), units });

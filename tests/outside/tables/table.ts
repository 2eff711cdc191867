import { cites, type TraitRow } from './traitRows.js';

/** One row of a published table beside what a trait of ours says. */
export interface Check {
  /** Species, with a word more where a table has several rows for it. */
  readonly id: string;
  /** Whether the trait names the table as its source: such a row holds that the value was carried over, and checks nothing. */
  readonly own: boolean;
  readonly agrees: boolean;
  readonly found: string;
}

/** A published table held against traits of the whole catalogue. */
export interface Table {
  readonly name: string;
  readonly traits: string;
  readonly published: string;
  readonly checks: () => readonly Check[];
  /** Why it has no 60 rows that stand apart from our own sources. */
  readonly few?: string;
  /** What was not compared, and why. */
  readonly left?: string;
}

/** Traits of a row's species that do not name the row's source. */
export const freeOf = (row: TraitRow, source: string, traits: readonly string[]): readonly string[] => traits.filter((trait) => !cites(row.species, trait, source));

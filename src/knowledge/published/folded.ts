import type { Knowledge } from '../knowledge.js';
import type { Columns } from './fromColumns.js';

/** Places in the table of sources: one, or several. */
export type SourcePlaces = number | readonly number[];

/** What a trait is, for the species that have a value of their own: their places in the group, the values, the sources. */
export type FoldedTrait = readonly [species: readonly number[], values: readonly unknown[], sources: readonly SourcePlaces[]];

/** The species of one group, with a hash of them: names by columns, and by trait only what differs from the parent. */
export interface FoldedGroup {
  readonly hash: string;
  readonly names: Columns;
  readonly traits: Readonly<Record<string, FoldedTrait>>;
}

/** All but the species: sources and rules by columns, the sources of a rule by their places. */
export interface FoldedCommon extends Omit<Knowledge, 'species' | 'sources' | 'rules'> {
  readonly sources: Columns;
  readonly rules: Columns;
  /** How many groups there are. */
  readonly groups: number;
}

/** What is not needed to answer: remarks beside traits, rules and sources, and the examples that test a rule. */
export interface FoldedNotes {
  readonly traits: Readonly<Record<string, Readonly<Record<string, string>>>>;
  readonly rules: Columns;
  readonly sources: Readonly<Record<string, string>>;
}

/** A group of species as texts, to be made knowledge of by `knowledgeOf`: all but the traits, and the traits. */
export interface SpeciesGroup {
  readonly id: string;
  readonly names: string;
  readonly traits: string;
}

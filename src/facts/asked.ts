import type { Knowledge, OperationWord, Trait, Value } from '../knowledge/knowledge.js';
import type { Proposal } from '../contract/types.generated.js';
import type { Climate } from '../season/climate.js';
import type { Day } from '../season/day.js';
import type { Range, SeasonOn } from '../season/standing.js';
import type { Branch, Structure } from '../structure/tree.js';
import type { FactValue } from './factValue.js';
import type { LogEntry } from './past/logEntries.js';

/** All that facts are worked out from: one proposal, its species and its season. */
export interface Asked {
  readonly knowledge: Knowledge;
  readonly proposal: Proposal;
  readonly operation: OperationWord;
  readonly speciesId: string;
  readonly traits: Readonly<Record<string, Trait>>;
  readonly day?: Day;
  readonly climate: Climate;
  /** Where its owner told the structure. */
  readonly built?: Built;
  /** Where its owner told what was done before. */
  readonly past?: Past;
  /** The season by a model or a sighting; a phase that is tried out takes the place of the one that is told. */
  readonly season: (phase: string | undefined, standing: string) => SeasonOn | undefined;
  /** Usual lowest of a year at the place, whatever the day. */
  readonly winterLowC: () => Range | undefined;
  /** Days of growth between two days at a standing, and whether that is sure; undefined where nothing tells. */
  readonly grownDays: (from: Day, to: Day, standing: string) => { readonly days: number; readonly sure: boolean } | undefined;
  /** Facts that are tried out: what if this were so? */
  readonly tried: ReadonlyMap<string, Value>;
}

/** A tree as its owner told that it is built, and what facts are worked out of that: loaded only where it is told. */
export interface Built {
  readonly structure: Structure;
  /** These are tried before the others of their names. */
  readonly facts: Readonly<Record<string, Derive>>;
  readonly bearsMm: (asked: Asked) => FactValue | undefined;
  readonly branchNamed: (asked: Asked, name: unknown) => Branch | undefined;
  readonly goesAnyway: (branch: Branch, entry: LogEntry, entries: readonly LogEntry[], asked: Asked) => boolean;
}

/** What facts are worked out of work that was done before: loaded only where some is told, by a log or the date of the last repotting. */
export interface Past {
  /** These are tried before the others of their names. */
  readonly facts: Readonly<Record<string, DerivePast>>;
  /** @param lookAt notes that a fact was looked at */
  readonly ofLogged: (asked: Asked, read: Read, lookAt: (id: string) => void, before: Before | undefined) => OfLogged;
}

export type Read = (id: string) => FactValue;

/** What the proposal itself tells of a fact, or what is tried out in its place; nothing is worked out or assumed. */
export type Told = (id: string) => Value | undefined;

/** The facts of logged work by itself, as they would be if it were asked about on this tree; with a trunk of so many mm where that is told. */
export type OfLogged = (entry: LogEntry, trunkMm: number) => Read;

/** How one fact is worked out; undefined where nothing tells, so that it is assumed or asked for. */
export type Derive = (read: Read, asked: Asked, told: Told) => FactValue | undefined;

/** How one fact is worked out of earlier work; undefined where that tells nothing of it. */
export type DerivePast = (read: Read, asked: Asked, ofLogged: OfLogged) => FactValue | undefined;

/** The facts of one proposal, worked out as they are asked for, and which facts each was worked out of. */
export interface DerivedFacts {
  readonly read: Read;
  readonly inputsOf: (id: string) => ReadonlySet<string>;
  /** Where earlier work is told. */
  readonly ofLogged: OfLogged | undefined;
}

/** Facts that were worked out before, and which of them are to be worked out anew. */
export interface Before {
  readonly facts: DerivedFacts;
  readonly changed: ReadonlySet<string>;
}

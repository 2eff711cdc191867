import type { Aims } from './aims.js';
import type { Alert, Caution, Chore, FactWord, FollowUp, Growing, OperationWord, PackWord, PhaseWord, SourceWord } from './knowledge.js';

type Members = Readonly<Record<string, unknown>>;

/** A species file as it is written, with the level that it stands at. */
export interface WrittenSpecies {
  readonly rank: 'group' | 'genus' | 'taxon';
  readonly written: Members;
}

/** Everything that knowledge is made of, as written, before inheritance. */
export interface Parts {
  readonly version: string;
  readonly facts: Readonly<Record<string, FactWord>>;
  readonly operations: Readonly<Record<string, OperationWord>>;
  readonly phases: Readonly<Record<string, PhaseWord>>;
  readonly sources: Readonly<Record<string, SourceWord>>;
  readonly species: ReadonlyMap<string, WrittenSpecies>;
  readonly rules: ReadonlyMap<string, Members>;
  readonly alerts: readonly Alert[];
  readonly cautions: Readonly<Record<string, Caution>>;
  readonly followUps: Readonly<Record<string, FollowUp>>;
  readonly chores: Readonly<Record<string, Chore>>;
  readonly soonDays: number;
  readonly againDays: number;
  readonly growing: Growing;
  readonly aims: Aims;
  readonly renames: readonly { readonly from: string; readonly to?: string; readonly since: string }[];
  readonly wording: Readonly<Record<string, string>>;
  readonly packs?: readonly PackWord[];
}

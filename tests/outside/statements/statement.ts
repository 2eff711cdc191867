import type { Assessment, Proposal } from '../../../src/contract/types.generated.js';

export type Verdict = Assessment['verdict'];

/** One question to the advisor with the verdicts that a published statement supports. */
export interface Ask {
  readonly tree: Proposal['tree'];
  readonly operation: Readonly<Record<string, unknown>>;
  readonly date: string;
  readonly where?: Proposal['where'];
  readonly accept: readonly Verdict[];
  /** Rules that must have fired for certain: the right verdict for the right reason. */
  readonly because?: readonly string[];
  /** Rules that would have spoken had the statement been otherwise: an `allowed` rests on their silence. */
  readonly silent?: readonly string[];
  /** Traits that decide without showing up in a finding. */
  readonly traits?: readonly string[];
  /** Follow-ups that the check looks at. */
  readonly follows?: readonly string[];
  /** A figure or a word of the answer that the statement gives; the answers to the statement's other questions stand beside it. */
  readonly also?: (assessment: Assessment, all: readonly Assessment[]) => void;
}

/** A published statement of what follows from work on a tree, checked by one or more questions. */
export interface Statement {
  /** 1 to 40: number in the list of forty published statements that the project drew up before it wrote rules; from 41: drawn up after, on sources that no rule or trait of the check cites. */
  readonly row: number;
  readonly says: string;
  /** Ids of shared/sources.yaml, each read, and the same in words. */
  readonly sources: readonly string[];
  readonly published: string;
  readonly asks: readonly Ask[];
  /** Where the deciding rule or trait cites the statement's own source as well: the read sources beside it that lead to the same verdict by themselves. */
  readonly restsOn?: readonly string[];
  /** Set where practice with trees in pots overrides the statement: why. It then counts for nothing. */
  readonly overridden?: string;
}

export const cambridge = { place: 'cambridge-united-kingdom' };
export const munich = { place: 'munich-airport-germany' };
export const albany = { place: 'albany-ny' };

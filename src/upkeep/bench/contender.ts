import type { ReadFact } from '../../engine/cells.js';
import type { Residual, Traits } from '../../engine/specialise.js';
import type { Knowledge, Rule, Value } from '../../knowledge/knowledge.js';

/** The rules of one operation on one kind of tree: those of the knowledge, and what is left of them once the traits are known. */
export interface Rules {
  readonly knowledge: Knowledge;
  readonly operation: string;
  readonly traits: Traits;
  readonly residuals: readonly Residual<Rule>[];
}

/** The values that each fact may have, one where it is known. */
export type MayBe = Readonly<Record<string, readonly Value[]>>;

/** The facts of one proposal, all worked out, in the form that each way likes best. */
export interface Facts {
  /** What the residual rules look at, as it is known. */
  readonly read: ReadFact;
  /** The same as values. */
  readonly mayBe: MayBe;
  /** What whole rules look at: every fact, and traits and the limits that are traits among them. */
  readonly whole: MayBe;
}

/** A rule that fires or might, and the facts on which it does: all that hold, and of an `any` the first that does, what the species settles before the rest. */
export interface FiredOn {
  readonly rule: string;
  readonly fires: 'certainly' | 'possibly';
  readonly facts: readonly string[];
}

export type Ask = (facts: Facts) => readonly FiredOn[] | Promise<readonly FiredOn[]>;

/** A way to judge rules: made ready once for some rules, then asked with facts. What one set of rules shares with another is made once. */
export type Contender = () => (rules: Rules) => Ask;

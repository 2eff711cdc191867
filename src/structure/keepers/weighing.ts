/** What all that is gone may come to together. */
export interface Budget {
  /** At least so much of it is used where a choice is gone. */
  readonly each: readonly number[];
  readonly whole: number;
}

/** What keeping and taking away would cost, as numbers: choices by index, sets of them as bits. */
export interface Weighing {
  readonly ids: readonly string[];
  /** Kept whatever it costs. */
  readonly lockedKept: number;
  /** Taken away whatever it costs. */
  readonly lockedGone: number;
  /** What a choice grows from, where that is a choice too: gone with it. */
  readonly parent: readonly (number | undefined)[];
  readonly keep: readonly number[];
  readonly remove: readonly number[];
  /** Added where it is cut on its own, not gone with its parent. */
  readonly cut: readonly number[];
  /** Cost of keeping both. */
  readonly pair: readonly (readonly number[])[];
  /** Cost of what is kept, taken together. */
  readonly whole: (kept: number) => number;
  /** A bound from below of `whole`, where some are kept and some are still open. */
  readonly wholeAtLeast: (kept: number, open: number) => number;
  /** Whether so many may be gone. What it forbids it forbids with more gone too, as long as nothing that is gone goes with them. */
  readonly bears: (gone: number) => boolean;
  /** Of each choice, others that stand so near that going together they may be too much: these are looked at together. */
  readonly contend: readonly number[];
  /** Of what `bears` forbids that which adds up: it sharpens the bound. */
  readonly budgets: readonly Budget[];
}

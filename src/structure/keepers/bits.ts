/** A set of places below 31 as the bits of a number: one place alone. */
export const bit = (i: number): number => 2 ** i;

/** Whether a place is in a set. */
export const has = (set: number, i: number): boolean => ((set >>> i) & 1) === 1;

/** What stands at the places of a set. */
export const membersOf = <Member>(all: readonly Member[], set: number): readonly Member[] => all.filter((_, i) => has(set, i));

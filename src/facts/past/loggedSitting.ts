import type { Asked, OfLogged } from '../asked.js';
import type { FactValue } from '../factValue.js';
import type { ownShares } from '../ownShares.js';
import type { Sitting } from '../sittingPoints.js';
import type { LogEntry } from './logEntries.js';
import { loggedStrain } from './loggedStrain.js';

/** Foliage or cut surfaces of logged work, as far as its entries, or the measures of a branch that they name, tell. What goes anyway, with its bearer or with the whole branch, takes no more of either. */
export const taken = (entries: readonly LogEntry[], asked: Asked, ofLogged: OfLogged, trunkMm: number, fact: keyof typeof ownShares): readonly FactValue[] =>
  entries.flatMap((entry) => {
    const branch = asked.built?.branchNamed(asked, entry.written['branch']);
    if (branch !== undefined && asked.built!.goesAnyway(branch, entry, entries, asked)) return [];
    const share = ofLogged(entry, trunkMm)(fact);
    return share.state === 'known' || (share.state === 'estimated' && branch !== undefined) ? [share] : [];
  });

export const sum = (shares: readonly FactValue[]): number => shares.reduce((all, { value }) => all + (value as number), 0);

/** Logged work of one day. */
export const loggedSitting = (entries: readonly LogEntry[], asked: Asked, ofLogged: OfLogged, trunkMm: number): Sitting => ({
  ops: entries.map(({ op }) => op),
  strains: entries.map((entry) => loggedStrain(entry, ofLogged, trunkMm)),
  foliageShare: sum(taken(entries, asked, ofLogged, trunkMm, 'sitting.foliageShare')),
  cutAreaShare: sum(taken(entries, asked, ofLogged, trunkMm, 'sitting.cutAreaShare')),
});

import type { OfLogged } from '../asked.js';
import type { Strain } from '../strain.js';
import type { LogEntry } from './logEntries.js';

/** The strain of logged work by itself: judged as work that is asked about; of what its entry leaves open, the least. */
export const loggedStrain = (entry: LogEntry, ofLogged: OfLogged, trunkMm: number): Strain => {
  const { value, among } = ofLogged(entry, trunkMm)('work.strain');
  return (value ?? (among as readonly Strain[])[0]) as Strain;
};

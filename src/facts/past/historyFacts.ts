import type { Asked, DerivePast, Read } from '../asked.js';
import { type FactValue, known, unknown } from '../factValue.js';
import { longAgo } from '../longAgo.js';
import { lastRepotted, logEntries, type LogEntry } from './logEntries.js';
import { loggedStrain } from './loggedStrain.js';
import { trunksOf } from './trunksOf.js';

const daysSince = (read: Read, asked: Asked, wanted: (entry: LogEntry) => boolean): FactValue | undefined => {
  const entries = logEntries(asked.proposal).filter(wanted);
  if (entries.length === 0) return undefined;
  if (read('asked.date').value === undefined || asked.day === undefined) return unknown();
  const days = entries.map((entry) => asked.day! - Math.min(entry.latest, asked.day!)).filter((since, i) => entries[i]!.earliest <= asked.day! && since >= 0);
  return days.length === 0 ? undefined : known(Math.min(longAgo, ...days), 'log');
};

const of = (...ops: readonly string[]) => (entry: LogEntry): boolean => ops.includes(entry.op);

/** Days since the tree was last repotted: from its own field, which may name a year or a month only, or the log. A date that is not exact counts from its last day. */
const sinceRepot: DerivePast = (read, asked) => {
  const last = lastRepotted(asked.proposal);
  const logged = daysSince(read, asked, of('repot', 'collect', 'divide'));
  if (last === undefined) return logged ?? (asked.proposal.tree.lastRepotted === 'never' ? known(longAgo, 'given') : undefined);
  if (read('asked.date').value === undefined || asked.day === undefined) return unknown();
  const since = Math.max(0, Math.min(longAgo, asked.day - last.latest));
  return known(logged?.value === undefined ? since : Math.min(since, logged.value as number), 'given');
};

/** Facts of what was done before. */
export const historyFacts: Readonly<Record<string, DerivePast>> = {
  'history.daysSinceRepot': sinceRepot,
  'history.daysSinceCollected': (read, asked) => daysSince(read, asked, of('collect')),
  'history.daysSinceDefoliated': (read, asked) => daysSince(read, asked, (entry) => entry.op === 'defoliate' && ((entry.written['shareRemoved'] as number | undefined) ?? 1) >= 0.5),
  'history.daysSinceCandleCut': (read, asked) => daysSince(read, asked, of('candle-cut')),
  'history.daysSinceCut': (read, asked) => daysSince(read, asked, of('remove-branch', 'cut-back', 'trunk-chop')),
  'history.daysSinceStripped': (read, asked) => daysSince(read, asked, of('strip-bark')),
  'history.daysSinceHardWork': (read, asked, ofLogged) => {
    if (logEntries(asked.proposal).length === 0) return undefined;
    const [surely, ...perhaps] = trunksOf(read, asked).map((trunkMm) => daysSince(read, asked, (entry) => entry.latest !== asked.day && loggedStrain(entry, ofLogged, trunkMm) === 'hard'));
    const soonest = perhaps.at(-1);
    if (soonest === undefined || (soonest.value !== undefined && soonest.value === surely?.value)) return surely;
    if (soonest.value === undefined) return soonest;
    return unknown({ atLeast: soonest.value as number, atMost: (surely?.value as number | undefined) ?? longAgo });
  },
  'history.stubAgeDays': (read, asked) => {
    const branch = asked.proposal.operation.branch;
    return daysSince(read, asked, (entry) => entry.written['finish'] === 'stub' && (branch === undefined || entry.written['branch'] === undefined || entry.written['branch'] === branch));
  },
  'history.wiredDays': (read, asked) => {
    const last = logEntries(asked.proposal).filter((entry) => (entry.op === 'wire' || entry.op === 'unwire') && (asked.day === undefined || entry.earliest <= asked.day)).at(-1);
    if (last === undefined || last.op === 'unwire') return undefined;
    return read('asked.date').value === undefined || asked.day === undefined ? unknown() : known(Math.max(0, asked.day - last.latest), 'log');
  },
  'history.daysSinceLayered': (read, asked) => daysSince(read, asked, of('divide')),
};

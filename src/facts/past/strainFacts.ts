import type { Asked, DerivePast, OfLogged, Read } from '../asked.js';
import { unknown } from '../factValue.js';
import { sittingPoints } from '../sittingPoints.js';
import { tenth } from '../strainOwed.js';
import { logEntries, type LogEntry } from './logEntries.js';
import { loggedSitting } from './loggedSitting.js';
import { trunksOf } from './trunksOf.js';

interface Owing {
  readonly on: number;
  /** What that sitting asked: at least and at most. */
  readonly points: readonly [number, number];
}

/** Earlier sittings of the log, each on the day on which it was last possible. */
const sittingsBefore = (read: Read, asked: Asked, ofLogged: OfLogged): readonly Owing[] => {
  const { day, proposal } = asked;
  const days = new Map<number, LogEntry[]>();
  for (const entry of logEntries(proposal)) {
    if (day === undefined || (entry.earliest < day && entry.latest !== day)) days.set(entry.latest, [...(days.get(entry.latest) ?? []), entry]);
  }
  if (days.size === 0) return [];
  const trunks = trunksOf(read, asked);
  return [...days].map(([on, entries]) => {
    const points = trunks.map((trunkMm) => sittingPoints(loggedSitting(entries, asked, ofLogged, trunkMm), asked));
    return { on: Math.min(on, day ?? on), points: [points[0]!, points.at(-1)!] };
  });
};

/**
 * What earlier work still asks of the tree: halved by each so many days of growth, sooner on a strong tree, by `strain` of shared/growing.yaml (practice).
 * Where no season is known, growth on half of the days is taken.
 */
const owed: DerivePast = (read, asked, ofLogged) => {
  const sittings = sittingsBefore(read, asked, ofLogged);
  if (sittings.length === 0) return undefined;
  const { day, knowledge: { growing } } = asked;
  const vigour = read('tree.vigour');
  const halves = growing.strain.halvesInGrowingDays / (growing.vigour[vigour.value as string] ?? 1);
  read('asked.date');
  read('place.told');
  const sum = (which: 0 | 1, grownSince: (on: number) => number): number => tenth(sittings.reduce((total, { on, points }) => total + points[which] * 0.5 ** (grownSince(on) / halves), 0));
  if (day === undefined) return unknown({ atLeast: 0, atMost: sum(1, () => 0) });
  const standing = read('tree.standing').value as string;
  const grown = new Map(sittings.map(({ on }) => [on, asked.grownDays(on, day, standing)]));
  const value = [0, 1].map((which) => sum(which as 0 | 1, (on) => grown.get(on)?.days ?? (day - on) / 2)) as [number, number];
  const sure = [...grown.values()].every((each) => each?.sure === true);
  const among = sure ? { atLeast: value[0], atMost: value[1] } : { atLeast: sum(0, (on) => day - on), atMost: sum(1, () => 0) };
  if (value[0] !== value[1]) return unknown(among);
  if (among.atLeast !== among.atMost) return { state: 'estimated', value: value[0], among, from: 'estimated' };
  return { state: vigour.state === 'assumed' && value[0] > 0 ? 'assumed' : 'known', value: value[0], from: 'log' };
};

/** Facts of strain that is owed for earlier work. */
export const strainFacts: Readonly<Record<string, DerivePast>> = { 'history.strain': owed };

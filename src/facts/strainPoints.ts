import type { Asked, Derive } from './asked.js';
import { type FactValue, known } from './factValue.js';
import { foliageTaken, logEntries, type LogEntry } from './logEntries.js';
import { type Strain, strainOf } from './strain.js';

/**
 * What one sitting asks of the tree, by `strain` of shared/growing.yaml (practice): each hard job its points, light ones theirs once together.
 * Light jobs that together take as much foliage as would make one of them hard are one hard job.
 */
export const strainPoints = (entries: readonly LogEntry[], asked: Asked, more: Strain = 'none'): number => {
  const { growing, operations } = asked.knowledge;
  const each = [...entries.map((entry) => strainOf(asked, entry)), more];
  const foliage = entries.reduce((sum, entry) => sum + foliageTaken(entry, asked.knowledge), 0);
  const together = entries.some(({ op }) => foliage >= (operations[op]?.strain.hardFrom?.['sitting.foliageShare'] ?? Infinity));
  const hard = Math.max(each.filter((strain) => strain === 'hard').length, together ? 1 : 0);
  return hard * growing.strain.hard + (each.includes('light') ? growing.strain.light : 0);
};

/** The work of a log by the day on which it was last possible. */
const byDay = (entries: readonly LogEntry[]): ReadonlyMap<number, readonly LogEntry[]> => {
  const days = new Map<number, LogEntry[]>();
  for (const entry of entries) days.set(entry.latest, [...(days.get(entry.latest) ?? []), entry]);
  return days;
};

/** What earlier work still asks of the tree: halved by each so many days of growth, sooner on a strong tree (practice). Where the season is not known, growth on half of the days is an estimate. */
export const strainStill: Derive = (read, asked): FactValue => {
  const { growing } = asked.knowledge;
  const { day } = asked;
  const entries = logEntries(asked.proposal).filter((entry) => day === undefined || (entry.earliest < day && entry.latest !== day));
  if (entries.length === 0) return known(0, 'log');
  const vigour = read('tree.vigour');
  const halves = growing.strain.halvesInGrowingDays / (growing.vigour[vigour.value as string] ?? 1);
  read('asked.date');
  read('place.told');
  const standing = read('tree.standing').value as string;
  const sittings = [...byDay(entries)].map(([on, work]) => ({ on: Math.min(on, day ?? on), points: strainPoints(work, asked) }));
  const sum = (grownSince: (on: number) => number): number => Math.round(10 * sittings.reduce((total, { on, points }) => total + points * 0.5 ** (grownSince(on) / halves), 0)) / 10;
  const all = sum(() => 0);
  if (day === undefined) return { state: 'unknown', among: { atLeast: 0, atMost: all }, from: 'unknown' };
  const grown = sittings.map(({ on }) => asked.grownDays(on, day, standing));
  if (grown.includes(undefined)) return { state: 'estimated', value: sum((on) => (day - on) / 2), among: { atLeast: sum((on) => day - on), atMost: all }, from: 'estimated' };
  const value = sum((on) => asked.grownDays(on, day, standing)!);
  return { state: vigour.state === 'assumed' ? 'assumed' : 'known', value, from: 'log' };
};

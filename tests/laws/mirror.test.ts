import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Judged } from '../../src/advice/judge.js';
import type { Proposal } from '../../src/contract/types.generated.js';
import { dayOf, isoOf } from '../../src/season/day.js';
import { smoothYear } from '../../src/season/smoothYear.js';
import { daysInYear, monthLengths } from '../../src/season/yearDay.js';
import { shipped, stations } from '../shipped.js';
import { cases } from './cases.js';
import { judgeWith } from './judged.js';
import { plausibleProposal } from './plausibleProposal.js';

/* Law 5: the same tree at mirrored latitude, with dates moved by half a year, gets the same verdict within 4 days of the mirrored date. Regional alerts and bundled stations apart. */

const judge = judgeWith(shipped, []);

/** Half a year is 182 days or 183, with equal right; four days either way of either. */
const halfYears = [183, 182, 184, 181, 185, 180, 186, 179, 187, 178];

const moved = (iso: string, days: number): string => isoOf(dayOf(iso) + days);
const movedMonth = (iso: string): string => {
  const [year, month] = iso.split('-').map(Number) as [number, number];
  return month <= 6 ? `${year}-${String(month + 6).padStart(2, '0')}` : `${year + 1}-${String(month - 6).padStart(2, '0')}`;
};
/** The normals of a smooth year that begins on another day: months are of unequal length, and normals handed from July to January would move by up to two days of their own. */
const normalsFrom = (months: readonly number[], start: number): number[] => {
  const year = smoothYear(months);
  let day = start;
  return monthLengths.map((length) => {
    const sum = Array.from({ length }, (_, i) => year[(day + i) % daysInYear]!).reduce((all, value) => all + value, 0);
    day += length;
    return sum / length;
  });
};

const mirrored = (proposal: Proposal, days: number): Proposal => {
  const { tree, where } = proposal;
  return {
    ...proposal,
    date: moved(proposal.date!, days),
    tree: {
      ...tree,
      ...(tree.lastRepotted === undefined || tree.lastRepotted === 'never' ? {} : { lastRepotted: tree.lastRepotted.length === 7 ? movedMonth(tree.lastRepotted) : moved(tree.lastRepotted, days) }),
      ...(tree.log === undefined ? {} : { log: (tree.log as readonly Record<string, unknown>[]).map((entry) => ({ ...entry, date: moved(entry['date'] as string, days) })) }),
    },
    where: {
      ...where,
      latitude: -where!.latitude!,
      ...(where!.monthlyMinC === undefined ? {} : { monthlyMinC: normalsFrom(where!.monthlyMinC, 183), monthlyMaxC: normalsFrom(where!.monthlyMaxC!, 183) }),
      ...(where!.lastFrost === undefined ? {} : { lastFrost: moved(`2025-${where!.lastFrost}`, 183).slice(5), firstFrost: moved(`2025-${where!.firstFrost!}`, 183).slice(5) }),
    },
  } as unknown as Proposal;
};

const north = stations.filter((station) => station.latitude > 0);
const frosty = north.filter((station) => station.lastFrost !== undefined && station.firstFrost !== undefined && station.lastFrost < '07' && station.firstFrost > '07');
const places = fc.oneof(
  fc.integer({ min: 1, max: 64 }).map((latitude) => ({ latitude })),
  fc.constantFrom(...north).map((station) => ({ latitude: station.latitude, monthlyMinC: normalsFrom(station.minC, 0), monthlyMaxC: normalsFrom(station.maxC, 0) })),
  fc.constantFrom(...frosty).map((station) => ({ latitude: station.latitude, lastFrost: station.lastFrost, firstFrost: station.firstFrost })),
);

/* Where frost dates gave another winter south of the equator. */
const onceBroken = [
  { tree: { species: 'abies' }, operation: { op: 'move-outdoors' }, date: '2024-01-01', where: { latitude: 42.79, lastFrost: '04-18', firstFrost: '10-15' } },
  { tree: { species: 'chaenomeles' }, operation: { op: 'repot' }, date: '2024-10-03', where: { latitude: 30.59, lastFrost: '04-13', firstFrost: '10-30' } },
] as unknown as readonly Proposal[];

const firedBy = (judged: Judged): string => judged.fired.map((fired) => `${fired.residual.rule.id} (${fired.fires})`).join(', ');

test('a tree on the other side of the equator, half a year later, gets the same verdict within four days', async () => {
  const dated = plausibleProposal(shipped, [...stations], { where: places }).filter((proposal) => proposal.date !== undefined && proposal.where !== undefined);
  await fc.assert(
    fc.asyncProperty(dated, async (proposal) => {
      const here = await judge(proposal);
      const there: string[] = [];
      for (const days of halfYears) {
        const other = await judge(mirrored(proposal, days));
        if (other.verdict === here.verdict) return;
        there.push(`${days}: ${other.verdict} by ${firedBy(other)}`);
      }
      expect.fail(`${here.verdict} by ${firedBy(here)} in the north; in the south ${there[0]!}`);
    }),
    { numRuns: cases(2000), examples: onceBroken.map((proposal) => [proposal]) },
  );
}, 1_800_000);

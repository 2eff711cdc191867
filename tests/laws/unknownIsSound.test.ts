import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Judged } from '../../src/advice/judge.js';
import type { Assessment, Proposal } from '../../src/contract/types.generated.js';
import { severity } from '../../src/engine/verdict.js';
import { assumptionsOf } from '../../src/advice/assumptions.js';
import { readyFor } from '../../src/advice/ready.js';
import { lookedAt, reaching } from '../../src/advice/relevant.js';
import { dayOf, isoOf } from '../../src/season/day.js';
import type { Value } from '../../src/knowledge/knowledge.js';
import { shipped, stations } from '../shipped.js';
import { cases, patience } from './cases.js';
import { judgeWith } from './judged.js';
import { plausibleProposal, valueArbitrary, whereArbitrary } from './plausibleProposal.js';

/* Law 2: whatever value an unknown fact turns out to have, the verdict lies in the stated range under the stated assumptions; telling more never widens the range. */

const judge = judgeWith(shipped, stations);
const ready = readyFor(shipped, stations);

const set = (proposal: Proposal, path: string, value: unknown): Proposal => {
  const [under, ...steps] = path.split('.');
  const put = (at: unknown, left: readonly string[]): unknown => (left.length === 0 ? value : { ...(at as object | undefined), [left[0]!]: put((at as Readonly<Record<string, unknown>> | undefined)?.[left[0]!], left.slice(1)) });
  return { ...proposal, [under!]: put(proposal[under as keyof Proposal], steps) } as Proposal;
};

const mayTell = (proposal: Proposal, id: string): boolean => {
  const given = shipped.facts[id]?.given;
  if (given === undefined || given === 'date' || given === 'tree.log' || given === 'tree.lastRepotted' || given === 'tree.structure') return false;
  const [under, step] = given.split('.');
  return under !== 'operation' || shipped.operations[proposal.operation.op]!.parameters.includes(step!);
};

/** The proposal with all that its assessment took for granted told as it was taken. */
const withAssumptions = (proposal: Proposal, assumed: readonly Assessment['assumed'][number][]): Proposal =>
  assumed.filter(({ fact, value }) => value !== null && shipped.facts[fact]!.type !== 'text' && mayTell(proposal, fact)).reduce((told, { fact, value }) => set(told, shipped.facts[fact]!.given!, value), proposal);

/** A place that does not tell the region, which was taken to be one without alerts: neither by name nor by where it lies. */
const withoutRegion = (where: object): object => Object.fromEntries(Object.entries(where).filter(([name]) => name !== 'region' && name !== 'longitude'));

const within = (value: Value, among: unknown): boolean => {
  if (among === undefined) return true;
  if (Array.isArray(among)) return among.includes(value);
  const span = among as { readonly atLeast: number; readonly atMost: number };
  return (value as number) >= span.atLeast && (value as number) <= span.atMost;
};

/** What is judged before more is told, and what it took for granted. */
const judgedBefore = async (proposal: Proposal) => {
  const { prepared, residuals: { rules }, judge: ask } = await ready(proposal);
  const before = await ask();
  return { before, rules, assumed: await assumptionsOf(before, ask, rules, prepared.asked) };
};

/** What is told later stays within what was left open before. */
const holds = async (before: Judged, told: Proposal, id: string): Promise<void> => {
  const after = await judge(told);
  const shown = JSON.stringify({ told: id, from: before.range, to: after.range, by: after.fired.map((each) => `${each.residual.rule.id} (${each.fires})`), proposal: told });
  expect(severity(after.verdict), `verdict ${after.verdict} outside of the range ${shown}`).toBeGreaterThanOrEqual(severity(before.range[0]));
  expect(severity(after.verdict), `verdict ${after.verdict} outside of the range ${shown}`).toBeLessThanOrEqual(severity(before.range[1]));
  expect(severity(after.range[0]), `the range widened ${shown}`).toBeGreaterThanOrEqual(severity(before.range[0]));
  expect(severity(after.range[1]), `the range widened ${shown}`).toBeLessThanOrEqual(severity(before.range[1]));
};

/* Phases seen on days on which the model of the place holds them to be all but impossible, or where it has no reach. */
const brownsville = stations.find((station) => station.id === 'brownsville-tx')!;
const seenAgainstTheModel = [
  { tree: { species: 'crataegus-monogyna', phase: 'bud-swell' }, operation: { op: 'air-layer' }, where: { latitude: brownsville.latitude, monthlyMinC: brownsville.minC, monthlyMaxC: brownsville.maxC }, date: '2024-11-29' },
  { tree: { species: 'juniperus-phoenicea', phase: 'leafing-out', health: 'sound' }, operation: { op: 'air-layer', at: 'trunk-base' }, where: { place: 'martin-sd' }, date: '2025-10-16' },
] as unknown as readonly Proposal[];

test.each(seenAgainstTheModel)('a day told after the phase stays within what the phase left open: $tree.species, $tree.phase on $date', async (proposal) => {
  const { date: _, ...undated } = proposal;
  const { before, assumed } = await judgedBefore(undated);
  await holds(before, withAssumptions(proposal, assumed), 'asked.date');
});

test('green told beside a last bud stays within what the bud left open', async () => {
  const proposal = { tree: { species: 'abies', trunk: { diameterMm: 8 } }, operation: { op: 'cut-back', budsLeft: 1, branchToTrunk: 0 }, date: '2024-01-01', where: { latitude: 0, longitude: 0 } } as unknown as Proposal;
  const { before, assumed } = await judgedBefore(proposal);
  for (const foliageLeft of [true, false]) await holds(before, withAssumptions(set(proposal, 'operation.foliageLeft', foliageLeft), assumed), 'cut.foliageLeft');
});

test('green told of a tree that is taken to grow in a heated room stays within what was left open', async () => {
  const where = {
    latitude: 64.8, monthlyMinC: [-27.2, -24.8, -19.2, -6.3, 3.2, 9.6, 11.3, 8, 1.7, -8.6, -20.9, -24.9],
    monthlyMaxC: [-17.2, -12.2, -3.7, 6.9, 16.1, 22, 22.6, 18.8, 12.6, -0.1, -11.7, -15.1],
  };
  const proposal = { tree: { species: 'bougainvillea-glabra', standing: 'heated-room' }, operation: { op: 'cut-back' }, date: '2024-08-25', where } as unknown as Proposal;
  const { before, assumed } = await judgedBefore(proposal);
  for (const foliageLeft of [true, false]) await holds(before, withAssumptions(set(proposal, 'operation.foliageLeft', foliageLeft), assumed), 'cut.foliageLeft');
});

test('whatever an unknown fact turns out to be, the verdict lies in the stated range, and telling it never widens the range', async () => {
  await fc.assert(
    fc.asyncProperty(plausibleProposal(shipped, stations), fc.nat(), fc.infiniteStream(fc.nat()), whereArbitrary(stations), async (proposal, pick, draws, where) => {
      const { before, rules, assumed } = await judgedBefore(proposal);
      const { facts } = before;
      const open = [...reaching(lookedAt(rules), facts)].filter((id) => shipped.facts[id]?.ask !== undefined && ['unknown', 'estimated'].includes(facts.read(id).state) && (id === 'place.told' || id === 'asked.date' || mayTell(proposal, id)));
      fc.pre(open.length > 0);
      const id = open[pick % open.length]!;
      /* What is listed among the assumptions, or is worked out of what is told now, held as it was stated. */
      fc.pre(!assumed.some((each) => reaching([each.fact], facts).has(id)));
      let told: Proposal;
      if (id === 'place.told') told = { ...proposal, where: assumed.some(({ fact }) => fact === 'place.region') ? withoutRegion(where) : where } as unknown as Proposal;
      else if (id === 'asked.date') told = { ...proposal, date: isoOf(dayOf('2024-01-01') + ((draws.next().value as number) % 700)) };
      else {
        const values = fc.sample(valueArbitrary(shipped.facts[id]!), { numRuns: 12, seed: draws.next().value as number }).filter((value) => within(value, facts.read(id).among));
        fc.pre(values.length > 0);
        told = set(proposal, shipped.facts[id]!.given!, values[0]);
      }
      await holds(before, withAssumptions(told, assumed), id);
    }),
    { numRuns: cases(2000) },
  );
}, patience(1_800_000));

test('a settled verdict has one end, and an unsettled one has two', async () => {
  await fc.assert(
    fc.asyncProperty(plausibleProposal(shipped, stations), async (proposal) => {
      const { verdict, range, settled } = await judge(proposal);
      expect(settled).toBe(range[0] === range[1]);
      expect(severity(range[0])).toBeLessThanOrEqual(severity(verdict));
      expect(severity(verdict)).toBeLessThanOrEqual(severity(range[1]));
    }),
    { numRuns: cases(2000) },
  );
}, patience(600_000));

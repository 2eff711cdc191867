import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createAdvisor } from '../../src/advisor.js';
import { flatten } from '../../src/knowledge/flatten.js';
import type { Parts, WrittenSpecies } from '../../src/knowledge/parts.js';
import { advisor, shipped, shippedParts, stations } from '../shipped.js';
import { cases, patience } from './cases.js';
import { plausibleProposal } from './plausibleProposal.js';

/* Law 1: shuffling rules, facts or files never changes an assessment, byte for byte. */

/** A stable shuffle by a seed: the same seed gives the same order on every run (xorshift32, Marsaglia 2003). */
const shuffler = (seed: number): (<Entry>(entries: readonly Entry[]) => readonly Entry[]) => {
  let state = seed | 1;
  const next = (): number => {
    state ^= state << 13;
    state ^= state >>> 17;
    state ^= state << 5;
    return state >>> 0;
  };
  return (entries) => {
    const shuffled = [...entries];
    for (let i = shuffled.length - 1; i > 0; i--) {
      const j = next() % (i + 1);
      [shuffled[i], shuffled[j]] = [shuffled[j]!, shuffled[i]!];
    }
    return shuffled;
  };
};

const shuffledParts = (parts: Parts, seed: number): Parts => {
  const shuffle = shuffler(seed);
  const keys = <Entry>(record: Readonly<Record<string, Entry>>): Readonly<Record<string, Entry>> => Object.fromEntries(shuffle(Object.entries(record)));
  const species = (each: WrittenSpecies): WrittenSpecies => {
    const traits = each.written['traits'] as Readonly<Record<string, unknown>> | undefined;
    return traits === undefined ? each : { ...each, written: { ...each.written, traits: keys(traits) } };
  };
  return {
    ...parts,
    facts: keys(parts.facts),
    operations: keys(parts.operations),
    sources: keys(parts.sources),
    cautions: keys(parts.cautions),
    followUps: keys(parts.followUps),
    wording: keys(parts.wording),
    species: new Map(shuffle([...parts.species]).map(([id, each]): [string, WrittenSpecies] => [id, species(each)])),
    rules: new Map(shuffle([...parts.rules])),
  };
};

const withoutKnowledgeName = (assessment: object): string => JSON.stringify(assessment, (key, value: unknown) => (key === 'knowledge' ? undefined : value));

test('the order of rules, species, traits and words never changes an assessment', async () => {
  const others = [11, 222, 3333].map((seed) => createAdvisor(flatten(shuffledParts(shippedParts, seed)), { places: stations }));
  await fc.assert(
    fc.asyncProperty(plausibleProposal(shipped, stations), fc.nat(others.length - 1), async (proposal, i) => {
      expect(withoutKnowledgeName(await others[i]!.assess(proposal))).toBe(withoutKnowledgeName(await advisor.assess(proposal)));
    }),
    { numRuns: cases(2000) },
  );
}, patience(600_000));

test('knowledge read in another order has the same name and hash', () => {
  for (const seed of [5, 77]) expect(flatten(shuffledParts(shippedParts, seed)).hash).toBe(shipped.hash);
});

test('an advisor that has answered other questions before, and one that has not answer the same', async () => {
  const fresh = createAdvisor(shipped, { places: stations });
  const proposals = fc.sample(plausibleProposal(shipped, stations), { numRuns: cases(60), seed: 20260321 });
  const forward: string[] = [];
  for (const proposal of proposals) forward.push(JSON.stringify(await advisor.assess(proposal)));
  const backward: string[] = [];
  for (const proposal of [...proposals].reverse()) backward.unshift(JSON.stringify(await fresh.assess(proposal)));
  expect(backward).toEqual(forward);
}, patience(600_000));

const reordered = (value: unknown, shuffle: ReturnType<typeof shuffler>): unknown => {
  if (Array.isArray(value)) return value.map((member) => reordered(member, shuffle));
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(shuffle(Object.entries(value)).map(([key, member]) => [key, reordered(member, shuffle)]));
};

/** A change carries what the proposal said as the proposal ordered it, so only there the order of keys is left open. */
const patchInAnyOrder = (key: string, value: unknown): unknown => (key === 'patch' ? sortedKeys(value) : value);

const sortedKeys = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(sortedKeys);
  if (typeof value !== 'object' || value === null) return value;
  return Object.fromEntries(Object.entries(value).sort(([a], [b]) => (a < b ? -1 : 1)).map(([key, member]) => [key, sortedKeys(member)]));
};

test('the order in which a proposal tells its facts changes nothing but its own echo', async () => {
  await fc.assert(
    fc.asyncProperty(plausibleProposal(shipped, stations), fc.integer({ min: 1, max: 1e9 }), async (proposal, seed) => {
      const told = async (written: unknown): Promise<string> => {
        const { proposal: _, ...answer } = await advisor.assess(written);
        return JSON.stringify(answer, patchInAnyOrder);
      };
      expect(await told(reordered(proposal, shuffler(seed)))).toBe(await told(proposal));
    }),
    { numRuns: cases(300) },
  );
}, patience(600_000));

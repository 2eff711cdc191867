import fc from 'fast-check';
import type { Proposal } from '../../src/contract/types.generated.js';
import type { FactWord, Knowledge, Value } from '../../src/knowledge/knowledge.js';
import type { Station } from '../../src/season/station.js';

type Members = Readonly<Record<string, unknown>>;

/** Values at which rules turn are round ones: numbers are drawn from a coarse grid, so that thresholds are met and passed. */
const numbers = (word: FactWord): readonly number[] => {
  const [least, most] = word.bounds ?? [0, 100];
  const grid: Readonly<Record<string, readonly number[]>> = {
    share: [0, 0.05, 0.1, 0.15, 0.2, 0.25, 0.3, 0.33, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 1],
    mm: [1, 2, 3, 5, 8, 10, 12, 15, 20, 25, 30, 40, 60, 80, 150, 300],
    C: [-30, -20, -15, -12, -9, -7, -5, -3, -1, 0, 2, 4, 5, 7, 8, 10, 12, 15, 18, 22],
    weeks: [0, 2, 4, 6, 8, 10, 12, 16, 20, 30],
    years: [1, 2, 3, 5, 8, 10, 15, 20, 40, 100],
  };
  return [...(grid[word.unit ?? ''] ?? [0, 1, 2, 3, 4, 6]), ...(word.tries ?? [])].filter((value) => value >= least && value <= most);
};

export const valueArbitrary = (word: FactWord): fc.Arbitrary<Value> => {
  switch (word.type) {
    case 'choice':
      return fc.constantFrom(...word.values!);
    case 'boolean':
      return fc.boolean();
    case 'number':
      return fc.constantFrom(...numbers(word));
    default:
      throw new Error(`a proposal gives no ${word.type}`);
  }
};

const some = (members: Readonly<Record<string, fc.Arbitrary<unknown>>>, often: number): fc.Arbitrary<Members> =>
  fc.record(Object.fromEntries(Object.entries(members).map(([name, arbitrary]) => [name, fc.option(arbitrary, { nil: undefined, freq: often })])))
    .map((drawn) => Object.fromEntries(Object.entries(drawn).filter(([, value]) => value !== undefined)));

/** Facts that a proposal tells one step under `tree` or `operation`. */
export const givenUnder = (knowledge: Knowledge, under: 'tree' | 'operation'): Readonly<Record<string, FactWord>> =>
  Object.fromEntries(Object.values(knowledge.facts).flatMap((word) => {
    const step = word.given?.startsWith(`${under}.`) === true ? word.given.slice(under.length + 1) : '';
    return step === '' || step.includes('.') || !['choice', 'boolean', 'number'].includes(word.type) || ['lastRepotted', 'log', 'structure'].includes(step) ? [] : [[step, word]];
  }));

export const operationArbitrary = (knowledge: Knowledge, op?: string): fc.Arbitrary<Members> => {
  const given = givenUnder(knowledge, 'operation');
  return (op === undefined ? fc.constantFrom(...Object.keys(knowledge.operations)) : fc.constant(op)).chain((id) =>
    some(Object.fromEntries(knowledge.operations[id]!.parameters.filter((name) => given[name] !== undefined).map((name) => [name, valueArbitrary(given[name]!)])), 2).map((told) => ({ op: id, ...told })));
};

export const dateArbitrary = fc.tuple(fc.constantFrom('2024', '2025', '2026'), fc.integer({ min: 0, max: 364 })).map(([year, day]) => new Date(Date.UTC(Number(year), 0, 1 + day)).toISOString().slice(0, 10));

const latitude = fc.integer({ min: -60, max: 64 });

export const whereArbitrary = (stations: readonly Station[]): fc.Arbitrary<Members> => fc.oneof(
  latitude.chain((each) => fc.integer({ min: -179, max: 179 }).map((longitude) => ({ latitude: each, longitude }))),
  fc.constantFrom(...stations).map((station) => ({ place: station.id })),
  fc.tuple(fc.constantFrom(...stations), fc.constantFrom('US-MN', 'US-TX', 'US-CA', 'CA-SK', 'GB', 'BE', 'JP', 'AU')).map(([{ latitude: north, longitude }, region]) => ({ latitude: north, longitude, region })),
  fc.constantFrom(...stations).map((station) => ({ latitude: station.latitude, monthlyMinC: station.minC, monthlyMaxC: station.maxC })),
  fc.constantFrom(...stations.filter((station) => station.lastFrost !== undefined && station.firstFrost !== undefined)).map((station) => ({ latitude: station.latitude, lastFrost: station.lastFrost, firstFrost: station.firstFrost })),
);

const logArbitrary = (knowledge: Knowledge): fc.Arbitrary<readonly Members[]> =>
  fc.array(fc.tuple(operationArbitrary(knowledge), dateArbitrary).map(([operation, date]) => ({ ...operation, date })), { maxLength: 3 });

export interface Wanted {
  readonly op?: string;
  readonly species?: readonly string[];
  readonly where?: fc.Arbitrary<Members>;
  /** One in so many of each fact is left out. */
  readonly told?: number;
}

/** Proposals that a grower could make: every kind of tree, work, day and place, each fact told or not. */
export const plausibleProposal = (knowledge: Knowledge, stations: readonly Station[], wanted: Wanted = {}): fc.Arbitrary<Proposal> => {
  const species = wanted.species ?? Object.values(knowledge.species).filter((each) => each.rank !== 'member').map((each) => each.id);
  const often = wanted.told ?? 2;
  const tree = some(Object.fromEntries(Object.entries(givenUnder(knowledge, 'tree')).filter(([name]) => name !== 'species').map(([name, word]) => [name, valueArbitrary(word)])), often);
  const more = some({
    trunk: some({ diameterMm: fc.constantFrom(8, 15, 25, 40, 60, 100), thickenedMm: fc.constantFrom(0.5, 2, 5) }, 3),
    lastRepotted: fc.oneof(dateArbitrary, dateArbitrary.map((date) => date.slice(0, 7)), fc.constant('never')),
    log: logArbitrary(knowledge),
    aim: some({ flowers: fc.constantFrom('no', 'yes'), trunkDiameterMm: fc.constantFrom(20, 60, 120) }, 2),
  }, 2);
  return fc.record({
    species: fc.constantFrom(...species),
    tree,
    more,
    operation: operationArbitrary(knowledge, wanted.op),
    date: fc.option(dateArbitrary, { nil: undefined, freq: 6 }),
    where: fc.option(wanted.where ?? whereArbitrary(stations), { nil: undefined, freq: 5 }),
  }).map(({ species: id, tree: told, more: further, operation, date, where }) => ({
    tree: { species: id, ...told, ...further },
    operation,
    ...(date === undefined ? {} : { date }),
    ...(where === undefined ? {} : { where }),
  }) as unknown as Proposal);
};

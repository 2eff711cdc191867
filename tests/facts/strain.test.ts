import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { FactValue } from '../../src/facts/factValue.js';
import type { LogEntry } from '../../src/facts/past/logEntries.js';
import { loggedStrain } from '../../src/facts/past/loggedStrain.js';
import { judgeWith } from '../laws/judged.js';
import { operationArbitrary } from '../laws/plausibleProposal.js';
import { shipped, stations } from '../shipped.js';
import { factsOf } from './factsOf.js';

type Members = Readonly<Record<string, unknown>>;

const judge = judgeWith(shipped, stations);

const strain = async (operation: Readonly<Record<string, unknown>>, tree: Readonly<Record<string, unknown>> = {}): Promise<unknown> => {
  const fact = (await factsOf({ tree: { species: 'acer-palmatum', ...tree }, operation }))('work.strain');
  return fact.value ?? fact.among;
};

describe('how hard work is on a tree', () => {
  test.each([
    [{ op: 'repot', rootsRemoved: 0.1, soilRemoved: 'some' }, 'light'],
    [{ op: 'repot', rootsRemoved: 0.4, soilRemoved: 'some' }, 'hard'],
    [{ op: 'repot', rootsRemoved: 0.1, soilRemoved: 'all' }, 'hard'],
    [{ op: 'trunk-chop' }, 'hard'],
    [{ op: 'collect' }, 'hard'],
    [{ op: 'slip-pot' }, 'none'],
    [{ op: 'feed' }, 'none'],
    [{ op: 'wire', bend: 'gentle' }, 'none'],
    [{ op: 'wire', bend: 'firm' }, 'light'],
    [{ op: 'wire', bend: 'severe' }, 'hard'],
    [{ op: 'defoliate', shareRemoved: 0.3 }, 'light'],
    [{ op: 'defoliate', shareRemoved: 1 }, 'hard'],
    [{ op: 'trim', shareRemoved: 0.01 }, 'none'],
    [{ op: 'trim', shareRemoved: 0.2 }, 'light'],
    [{ op: 'trim', shareRemoved: 1 }, 'hard'],
  ])('%j is %s', async (operation, expected) => {
    expect(await strain(operation)).toBe(expected);
  });

  test('a bend that is not told may be anything', async () => {
    expect(await strain({ op: 'wire' })).toEqual(['none', 'light', 'hard']);
  });

  test('a bend is worked out of its radius and the wood: 2 mm round 100 mm is gentle, 20 mm round 100 mm severe', async () => {
    expect(await strain({ op: 'wire', radiusMm: 200, branchDiameterMm: 2 })).toBe('none');
    expect(await strain({ op: 'wire', radiusMm: 100, branchDiameterMm: 20 })).toBe('hard');
  });
});

test('a share of growing tips is not a share of foliage', async () => {
  const share = async (op: string): Promise<number> => (await factsOf({ tree: { species: 'acer-palmatum' }, operation: { op, shareRemoved: 0.5 } }))('sitting.foliageShare').value as number;
  expect(await share('pinch')).toBeLessThan(0.5);
  expect(await share('defoliate')).toBe(0.5);
});

describe('work of a log', () => {
  const trunkMm = 40;
  const asLogged = (operation: Members): LogEntry => ({ op: operation['op'] as string, earliest: 20_000, latest: 20_000, written: { ...operation, date: '2024-10-04' } });
  const species = fc.constantFrom('acer-palmatum', 'pinus-thunbergii', 'ficus-microcarpa', 'juniperus-chinensis');

  test('is as hard as it was when it was asked about', async () => {
    await fc.assert(fc.asyncProperty(species, operationArbitrary(shipped), async (kind, operation) => {
      const { facts } = await judge({ tree: { species: kind, trunk: { diameterMm: trunkMm }, lastRepotted: 'never' }, operation });
      const strain = facts.read('work.strain');
      const open = strain.value ?? (strain.among as readonly string[])[0];
      expect(loggedStrain(asLogged(operation), facts.ofLogged!, trunkMm)).toBe(open);
    }), { numRuns: 500 });
  });

  test('of one day comes to the same, whichever of its operations is asked about', async () => {
    const told = fc.constantFrom<Members>(
      { op: 'remove-branch', branchDiameterMm: 28, foliageShare: 0.1 }, { op: 'remove-branch', branchDiameterMm: 8, foliageShare: 0.12 }, { op: 'remove-branch', branchToTrunk: 0.3, foliageShare: 0.2 },
      { op: 'repot', rootsRemoved: 0.4, soilRemoved: 'some' }, { op: 'repot', rootsRemoved: 0.1, soilRemoved: 'none' }, { op: 'thin-shoots', shareRemoved: 0.2 },
      { op: 'wire', bend: 'severe', branchDiameterMm: 5 }, { op: 'trunk-chop', branchDiameterMm: 16, foliageShare: 0.5 }, { op: 'strip-bark', on: 'trunk', girthShare: 0.3 },
    );
    await fc.assert(fc.asyncProperty(fc.array(told, { minLength: 2, maxLength: 4 }), async (sitting) => {
      const asks = await Promise.all(sitting.map(async (operation, i) => {
        const log = sitting.filter((_, j) => j !== i).map((other) => ({ ...other, date: '2026-03-10' }));
        const read = await factsOf({ tree: { species: 'acer-palmatum', trunk: { diameterMm: trunkMm }, log }, operation, date: '2026-03-10' });
        return [read('sitting.strain').value, read('sitting.hardOperations').value, read('sitting.foliageShare').value, read('sitting.cutAreaShare').value];
      }));
      for (const each of asks) expect(each).toEqual(asks[0]);
    }), { numRuns: 200 });
  });

  test('of branches told in mm is as hard as it may be where the trunk is not told, and as it is once it is', async () => {
    const log = [{ op: 'remove-branch', branchDiameterMm: 28, foliageShare: 0.1, date: '2026-03-01' }];
    const owed = async (tree: Members): Promise<FactValue> => (await factsOf({ tree: { species: 'acer-palmatum', log, ...tree }, operation: { op: 'repot' }, date: '2026-03-10', where: { place: 'koeln-cologne-germany' } }))('history.strain');
    expect(await owed({})).toMatchObject({ state: 'unknown', among: { atLeast: 1, atMost: 4 } });
    expect(await owed({ trunk: { diameterMm: 40 } })).toMatchObject({ value: 4 });
    expect(await owed({ trunk: { diameterMm: 200 } })).toMatchObject({ value: 1 });
  });
});

test('cut surfaces of a sitting hang on the trunk where its cuts are told in mm', async () => {
  const log = [{ op: 'remove-branch', branchDiameterMm: 20, date: '2026-03-10' }];
  const area = async (trunk: Members): Promise<FactValue> => (await factsOf({ tree: { species: 'acer-palmatum', log, ...trunk }, operation: { op: 'repot' }, date: '2026-03-10' }))('sitting.cutAreaShare');
  expect(await area({})).toMatchObject({ state: 'unknown', among: { atLeast: 0, atMost: 4 } });
  expect(await area({ trunk: { diameterMm: 40 } })).toMatchObject({ value: 0.25 });
});

describe('what earlier work still asks', () => {
  const log = [{ op: 'repot', rootsRemoved: 0.4, date: '2026-03-01' }];
  const owed = async (rest: Members): Promise<FactValue> => (await factsOf({ tree: { species: 'acer-palmatum', vigour: 'steady', log }, operation: { op: 'feed' }, ...rest }))('history.strain');

  test('is halved by each 90 growing days of a steady tree; a winter makes nothing good', async () => {
    const where = { place: 'koeln-cologne-germany' };
    const [spring, autumn, winter] = [await owed({ where, date: '2026-03-02' }), await owed({ where, date: '2026-11-20' }), await owed({ where, date: '2027-02-01' })];
    expect(spring).toMatchObject({ state: 'known', value: 4 });
    expect(autumn.value).toBeGreaterThan(0);
    expect(autumn.value).toBeLessThan(1.5);
    expect(winter.value).toBe(autumn.value);
  });

  test('is an estimate by latitude alone, or where no place is told, and lies between no growth and growth on each day', async () => {
    for (const rest of [{ where: { latitude: 51 } }, {}]) expect(await owed({ ...rest, date: '2026-05-30' })).toMatchObject({ state: 'estimated', among: { atLeast: 2, atMost: 4 } });
    expect(await owed({})).toMatchObject({ state: 'unknown', among: { atLeast: 0, atMost: 4 } });
  });

  test('is spoken of on the scale that is counted on', () => {
    const { light, hard } = shipped.growing.strain;
    for (const id of ['history.strain', 'sitting.strain']) expect(shipped.facts[id]!.meaning).toMatch(new RegExp(`a hard job asks ${hard}, .*light ones? (${light}|${light} together)`));
    for (const id of ['strain/adds-up', 'strain/more-than-it-can-pay']) expect(shipped.rules[id]!.because).toContain(`one hard job asks ${hard}`);
  });
});

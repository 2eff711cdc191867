import { describe, expect, test } from 'vitest';
import type { FactValue } from '../../src/facts/factValue.js';
import { SparebudError } from '../../src/knowledge/error.js';
import { advisor } from '../shipped.js';
import { factsOf } from './factsOf.js';

const trunk = (...points: readonly (readonly [number, number])[]): object => ({ id: 't', points: points.map(([heightMm, diameterMm]) => ({ heightMm, diameterMm })) });

/** A maple of six branches, an invented tree. */
const maple = {
  species: 'acer-palmatum', vigour: 'steady', growing: 'bonsai-pot', trunk: { heightMm: 500 },
  structure: {
    trunks: [trunk([0, 48], [60, 40], [150, 34], [250, 28], [350, 20], [450, 10])],
    branches: [
      { id: 'b1', heightMm: 120, azimuthDeg: 95, diameterMm: 12 }, { id: 'b2', heightMm: 124, azimuthDeg: 265, diameterMm: 11 }, { id: 'b3', heightMm: 126, azimuthDeg: 10, diameterMm: 8 },
      { id: 'b4', heightMm: 185, azimuthDeg: 190, diameterMm: 9 }, { id: 'b5', heightMm: 190, azimuthDeg: 280, diameterMm: 17 }, { id: 'b6', heightMm: 245, azimuthDeg: 100, diameterMm: 8 },
    ],
  },
};

/** A young pine with one whorl of five on a trunk of 30, an invented tree. */
const pine = {
  species: 'pinus-thunbergii', trunk: { heightMm: 400 },
  structure: { trunks: [trunk([0, 30], [200, 30], [300, 14])], branches: [10, 9, 9, 8, 7].map((diameterMm, i) => ({ id: `w${i}`, heightMm: 100, azimuthDeg: 72 * i, diameterMm })) },
};

const fact = async (tree: object, operation: object, id: string, rest: object = {}): Promise<FactValue> => (await factsOf({ tree, operation, ...rest }))(id);
const value = async (tree: object, operation: object, id: string, rest: object = {}): Promise<unknown> => (await fact(tree, operation, id, rest)).value;
const remove = (branch: string, rest: object = {}): object => ({ op: 'remove-branch', branch, finish: 'collar', ...rest });

describe('a branch of the structure brings its measures along', () => {
  test.each([['cut.branchDiameterMm', 12], ['cut.branchToTrunk', 0.333], ['cut.heightMm', 120], ['tree.trunkDiameterMm', 48], ['wound.widthMm', 12]] as const)('%s is %f', async (id, expected) => {
    expect(await fact(maple, remove('b1'), id)).toMatchObject({ state: 'known', value: expected });
  });

  test('its share of the foliage is an estimate with a range', async () => {
    const share = await fact(maple, remove('b5'), 'cut.foliageShare');
    expect(share.state).toBe('estimated');
    const { atLeast, atMost } = share.among as { readonly atLeast: number; readonly atMost: number };
    expect(atLeast).toBeLessThan(share.value as number);
    expect(atMost).toBeGreaterThan(share.value as number);
  });

  test('work that is hard by that estimate adds up to an estimate, whatever is owed for sure: told, it is known', async () => {
    const owing = { ...maple, log: [{ op: 'trunk-chop', date: '2026-05-25' }] };
    const here = { date: '2026-06-01', where: { place: 'koeln-cologne-germany' } };
    for (const id of ['work.strain', 'sitting.strain', 'sitting.strainSum']) {
      expect(await fact(owing, remove('b5'), id, here), id).toMatchObject({ state: 'estimated' });
      expect(await fact(owing, remove('b5', { foliageShare: 0.5, branchDiameterMm: 17 }), id, here), id).not.toMatchObject({ state: 'estimated' });
    }
  });

  test('what the operation tells beats it', async () => {
    expect(await value(maple, remove('b1', { branchDiameterMm: 18 }), 'cut.branchDiameterMm')).toBe(18);
    expect(await value(maple, remove('b1', { branchDiameterMm: 18 }), 'cut.branchToTrunk')).toBe(0.5);
    expect(await value(maple, remove('b1', { branchToTrunk: 0.25 }), 'cut.branchDiameterMm')).toBe(9);
    expect(await fact(maple, remove('b1', { foliageShare: 0.2 }), 'cut.foliageShare')).toMatchObject({ state: 'known', value: 0.2 });
  });

  test('a cut along the branch is thinner than its joint: how thick is still asked', async () => {
    expect(await fact(maple, { op: 'cut-back', branch: 'b1' }, 'cut.branchDiameterMm')).toEqual({ state: 'unknown', among: { atLeast: 0, atMost: 12 }, from: 'unknown' });
  });

  test('a side branch is measured against the branch that bears it', async () => {
    const forked = { ...maple, structure: { ...maple.structure, branches: [...maple.structure.branches, { id: 'side', from: 'b5', heightMm: 192, diameterMm: 8.5 }] } };
    expect(await value(forked, remove('side'), 'cut.branchToTrunk')).toBe(0.5);
  });

  test('a trunk that leaves another is judged as the branch that it is', async () => {
    const twin = { ...maple, structure: { ...maple.structure, trunks: [...maple.structure.trunks, { id: 'second', from: 't', atMm: 60, points: [{ heightMm: 70, diameterMm: 36 }] }] } };
    expect(await value(twin, remove('second'), 'cut.branchToTrunk')).toBe(0.9);
    expect(await value(twin, remove('second'), 'structure.isTrunk')).toBe(true);
  });
});

describe('levels', () => {
  test('a whorl is counted before and after the cut', async () => {
    expect(await value(pine, remove('w0'), 'structure.levelMembersNow')).toBe(5);
    expect(await value(pine, remove('w0'), 'structure.levelMembers')).toBe(4);
    expect(await value(pine, { op: 'wire', branch: 'w0' }, 'structure.levelMembers')).toBe(5);
    expect(await value(pine, { op: 'wire', branch: 'w0' }, 'structure.collarShare')).toBe(0.547);
  });

  test('opposite branches at one level are bars, once until one of them goes', async () => {
    expect(await value(maple, { op: 'wire', branch: 'b1' }, 'structure.bars')).toBe(1);
    expect(await value(maple, { op: 'wire', branch: 'b1' }, 'structure.bars', { date: '2026-03-01', tree: { ...maple, log: [{ op: 'remove-branch', branch: 'b2', date: '2026-03-01' }] } })).toBe(0);
    expect(await value(maple, { op: 'wire', branch: 'b6' }, 'structure.bars')).toBe(0);
  });

  test('a thicker aim makes more of them one level', async () => {
    expect(await value(maple, { op: 'wire', branch: 'b6' }, 'structure.levelMates')).toBe(0);
    expect(await value({ ...maple, aim: { trunkDiameterMm: 300 } }, { op: 'wire', branch: 'b6' }, 'structure.levelMates')).toBeGreaterThan(0);
  });
});

describe('a sitting', () => {
  const also = (...branches: readonly string[]): object => ({ date: '2026-03-01', tree: { ...pine, log: branches.map((branch) => ({ ...remove(branch), date: '2026-03-01' })) } });

  test('three of a pine whorl wound more than a quarter of the girth, two do not', async () => {
    expect(await value(pine, remove('w0'), 'wound.girthShare', also('w2', 'w3'))).toBeCloseTo(0.291, 3);
    expect(await value(pine, remove('w0'), 'wound.girthShare', also('w3'))).toBeCloseTo(0.194, 3);
    expect(await value(pine, remove('w0'), 'sitting.cutAreaShare', also('w2', 'w3'))).toBeCloseTo(0.272, 3);
    expect(await value(pine, remove('w0'), 'sitting.cutAreaShare', also('w3'))).toBeCloseTo(0.182, 3);
  });

  test('adds up foliage, whichever of the cuts is asked about', async () => {
    const one = await fact(pine, remove('w0'), 'sitting.foliageShare', also('w2', 'w3'));
    const other = await fact(pine, remove('w3'), 'sitting.foliageShare', also('w0', 'w2'));
    expect(one).toEqual(other);
    expect(one.value as number).toBeCloseTo(((await value(pine, remove('w0'), 'cut.foliageShare')) as number) + ((await value(pine, remove('w2'), 'cut.foliageShare')) as number) + ((await value(pine, remove('w3'), 'cut.foliageShare')) as number), 2);
  });

  test('a side branch that goes with its bearer takes no foliage of its own', async () => {
    const forked = { ...pine, structure: { ...pine.structure, branches: [...pine.structure.branches, { id: 'side', from: 'w0', heightMm: 102, diameterMm: 5 }] } };
    const date = '2026-03-01';
    expect(await value(forked, remove('w0'), 'sitting.foliageShare', { date, tree: { ...forked, log: [{ ...remove('side'), date }] } })).toBe(await value(forked, remove('w0'), 'sitting.foliageShare', { date }));
  });

  test('a branch that is stripped to deadwood gives up its foliage, counted once where it was also shortened to a stub; bark off the trunk costs none', async () => {
    const carrying = { ...pine, structure: { ...pine.structure, branches: pine.structure.branches.map((branch, i) => ({ ...branch, foliageShare: i === 0 ? 0.4 : 0.15 })) } };
    const date = '2026-03-01';
    const [strip, stub] = [{ op: 'strip-bark', on: 'branch', branch: 'w0' }, remove('w0', { finish: 'stub' })];
    const share = async (operation: object, ...log: readonly object[]): Promise<unknown> => value(carrying, operation, 'sitting.foliageShare', { date, tree: { ...carrying, log: log.map((work) => ({ ...work, date })) } });
    expect(await share(strip)).toBe(0.4);
    expect(await share({ ...strip, on: 'trunk' })).toBe(0);
    expect(await share(strip, stub)).toBe(0.4);
    expect(await share(stub, strip)).toBe(0.4);
    expect(await share({ op: 'wire', bend: 'gentle' }, stub, strip)).toBe(0.4);
    expect(await share(remove('w1'), strip)).toBe(0.55);
  });

  test('old wounds at the level count while they are open', async () => {
    const scarred = (closed: boolean): object => ({ ...pine, structure: { ...pine.structure, wounds: [{ heightMm: 105, azimuthDeg: 180, widthMm: 15, closed }] } });
    expect(await value(scarred(false), remove('w0'), 'wound.girthShare')).toBeCloseTo(0.108 + 1 / 6, 3);
    expect(await value(scarred(true), remove('w0'), 'wound.girthShare')).toBeCloseTo(0.108, 3);
    expect(await value(scarred(false), remove('w2'), 'structure.gapNearShare')).toBeCloseTo(1 / 6, 3);
    expect(await value(scarred(true), remove('w2'), 'structure.gapNearShare')).toBe(0);
  });
});

describe('what a cut leaves', () => {
  test('the height of the first branch, where the cut takes the first one', async () => {
    const low = { ...maple, structure: { ...maple.structure, branches: maple.structure.branches.filter(({ id }) => !['b2', 'b3'].includes(id)) } };
    expect(await value(low, remove('b1'), 'structure.baredShare')).toBe(0.37);
    expect(await value(low, remove('b4'), 'structure.baredShare')).toBe(0);
    expect(await value(maple, remove('b1'), 'structure.baredShare')).toBe(0.248);
    expect(await value({ ...low, aim: { heightMm: 1000 } }, remove('b1'), 'structure.baredShare')).toBe(0.185);
    expect(await value(low, remove('b1'), 'structure.liveCrownLeft')).toBe(0.63);
  });

  test('an empty side, where the cut opens one', async () => {
    expect(await value(maple, remove('b4'), 'structure.holeDeg')).toBe(165);
    expect(await value(maple, remove('b2'), 'structure.holeDeg')).toBe(0);
    expect(await value(maple, { op: 'wire', branch: 'b4' }, 'structure.holeDeg')).toBe(0);
  });

  test('the node behind the last one left', async () => {
    const long = { ...maple, structure: { ...maple.structure, branches: [{ id: 'long', heightMm: 120, diameterMm: 8, lengthMm: 200, budsAtMm: [30, 45, 120, 160], foliageBackToMm: 100 }] } };
    expect(await value(long, { op: 'cut-back', branch: 'long', nodesLeft: 3 }, 'cut.secondNodeMm')).toBe(75);
    expect(await value(long, { op: 'cut-back', branch: 'long', nodesLeft: 3 }, 'cut.lostIfNodeFails')).toBe(0.625);
    expect(await value(long, { op: 'cut-back', branch: 'long', nodesLeft: 3 }, 'cut.foliageLeft')).toBe(true);
    expect(await value(long, { op: 'cut-back', branch: 'long', nodesLeft: 2 }, 'cut.foliageLeft')).toBe(false);
  });

  test('a chop takes what is above it, and leaves green where a branch is below', async () => {
    const led = { ...maple, structure: { ...maple.structure, branches: maple.structure.branches.map((branch) => (branch.id === 'b5' ? { ...branch, role: 'leader' } : branch)) } };
    expect(await value(led, { op: 'trunk-chop' }, 'cut.leaderToTrunk')).toBeCloseTo(0.538, 3);
    expect(await value(led, { op: 'trunk-chop' }, 'cut.foliageLeft')).toBe(true);
    expect(await value(led, { op: 'trunk-chop' }, 'wound.widthMm')).toBeCloseTo(31.6, 1);
    const share = (await value(led, { op: 'trunk-chop', heightMm: 130 }, 'cut.foliageShare')) as number;
    expect(share).toBeGreaterThan((await value(led, { op: 'trunk-chop' }, 'cut.foliageShare')) as number);
  });

  test('a chop below every branch leaves no green where they carry all of the foliage, and says nothing where something else may carry some', async () => {
    const carrying = (foliageShare: number): object => ({ ...pine, structure: { ...pine.structure, branches: pine.structure.branches.map((branch) => ({ ...branch, foliageShare })) } });
    const chop = { op: 'trunk-chop', heightMm: 90 };
    expect(await value(carrying(0.2), chop, 'cut.foliageLeft')).toBe(false);
    expect(await value(carrying(0.19), chop, 'cut.foliageLeft')).toBe(false);
    expect(await value(carrying(0.18), chop, 'cut.foliageLeft')).toBeUndefined();
    expect(await value(pine, chop, 'cut.foliageLeft')).toBeUndefined();
  });
});

test('a pine branch cut back past its last green is advised against', async () => {
  const bare = { ...pine, structure: { ...pine.structure, branches: [{ id: 'long', heightMm: 120, diameterMm: 8, budsAtMm: [30, 60, 90], foliageBackToMm: 80 }] } };
  const ask = async (nodesLeft: number): Promise<readonly string[]> => (await advisor.assess({ tree: bare, operation: { op: 'cut-back', branch: 'long', nodesLeft, woodAge: 'old' }, date: '2026-03-01' })).findings.map(({ rule, fires }) => `${rule} ${fires}`);
  expect(await ask(2)).toContain('cut/no-buds-to-come certainly');
  expect(await ask(3)).not.toContain('cut/no-buds-to-come certainly');
});

test('a branch that is none of the structure is an error with a near miss, unless the log speaks of it', async () => {
  await expect(advisor.assess({ tree: maple, operation: remove('b11') })).rejects.toThrow(/did you mean `b1`/);
  await expect(advisor.assess({ tree: maple, operation: remove('b11') })).rejects.toBeInstanceOf(SparebudError);
  const logged = { ...maple, log: [{ op: 'remove-branch', branch: 'old-left', finish: 'stub', date: '2025-03-01' }] };
  expect((await advisor.assess({ tree: logged, operation: { op: 'clean-stub', branch: 'old-left', branchDiameterMm: 6 }, date: '2026-03-01' })).schema).toBe('assessment/1');
});

test('a tree without a structure is judged as before: nothing of it is unknown', async () => {
  const read = await factsOf({ tree: { species: 'acer-palmatum' }, operation: remove('low') });
  for (const id of ['structure.levelMates', 'structure.bars', 'structure.collarShare', 'structure.baredShare', 'structure.holeDeg', 'structure.role', 'structure.thickerAbove']) expect(['known', 'assumed'], id).toContain(read(id).state);
});

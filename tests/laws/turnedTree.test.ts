import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Proposal } from '../../src/contract/types.generated.js';
import { shipped, stations } from '../shipped.js';
import { plausibleTree, type Tree } from '../structure/plausibleTree.js';
import { cases } from './cases.js';
import { judgeWith } from './judged.js';

/* What a tree is does not hang on how it was told: turned, mirrored, with other names, with its branches in another order, it gets the same verdict by the same rules. */

const judge = judgeWith(shipped, stations);
const date = '2026-03-01';
const where = { latitude: 51, longitude: 3.7 };

const ops = ['remove-branch', 'wire', 'cut-back', 'strip-bark'] as const;

const verdictOf = async (tree: Proposal['tree'], operation: object): Promise<unknown> => {
  const judged = await judge({ tree, operation, date, where });
  return { verdict: judged.verdict, range: judged.range, fired: judged.fired.map(({ residual, fires, firm }) => `${residual.rule.id} ${fires} ${String(firm)}`).sort() };
};

const asked = (tree: Tree, op: (typeof ops)[number], pick: number): { readonly op: string; readonly branch: string } => ({ op, branch: tree.structure.branches[pick % tree.structure.branches.length]!.id });

const withSides = (tree: Tree, side: (azimuthDeg: number) => number, ofFront: (azimuthDeg: number) => number, offset: 1 | -1 = 1): Tree => ({
  ...tree,
  structure: {
    ...tree.structure,
    frontAzimuthDeg: ofFront(tree.structure.frontAzimuthDeg ?? 0),
    trunks: tree.structure.trunks!.map((trunk) => ({ ...trunk, points: trunk.points.map((point) => (point.sideMm === undefined ? point : { ...point, sideMm: offset * point.sideMm })) })),
    branches: tree.structure.branches.map((branch) => (branch.azimuthDeg === undefined ? branch : { ...branch, azimuthDeg: side(branch.azimuthDeg) })),
    wounds: (tree.structure.wounds ?? []).map((wound) => (wound.azimuthDeg === undefined ? wound : { ...wound, azimuthDeg: side(wound.azimuthDeg) })),
  },
});

const law = async (change: (tree: Tree, by: number) => readonly [Tree, (id: string) => string]): Promise<void> => {
  await fc.assert(
    fc.asyncProperty(plausibleTree, fc.constantFrom(...ops), fc.nat(), fc.integer({ min: -1000, max: 1000 }), async (tree, op, pick, by) => {
      const operation = asked(tree, op, pick);
      const [changed, named] = change(tree, by);
      expect(await verdictOf(changed, { ...operation, branch: named(operation.branch) })).toEqual(await verdictOf(tree, operation));
    }),
    { numRuns: cases(150) },
  );
};

const same = (id: string): string => id;

test('turning the tree about its axis changes no verdict', async () => await law((tree, by) => [withSides(tree, (azimuth) => azimuth + by, (azimuth) => azimuth + by), same]));

test('a side told by more than a full turn changes no verdict', async () => await law((tree, by) => [withSides(tree, (azimuth) => azimuth + 360 * (by % 5), (azimuth) => azimuth), same]));

test('mirroring it changes no verdict', async () => await law((tree) => [withSides(tree, (azimuth) => -azimuth, (azimuth) => -azimuth, -1), same]));

test('other names for its branches, and another order, change no verdict', async () =>
  await law((tree) => {
    const named = (id: string): string => `z${99 - Number(id.slice(1))}`;
    return [{ ...tree, structure: { ...tree.structure, branches: tree.structure.branches.map((branch) => ({ ...branch, id: named(branch.id) })).reverse() } }, named];
  }));

test('another branch on the tree makes no wound smaller, nor one more taken in the sitting', async () => {
  await fc.assert(
    fc.asyncProperty(plausibleTree, fc.nat(), fc.integer({ min: 30, max: 400 }), async (tree, pick, heightMm) => {
      const operation = asked(tree, 'remove-branch', pick);
      const more: Tree = { ...tree, structure: { ...tree.structure, branches: [...tree.structure.branches, { id: 'more', heightMm, azimuthDeg: 77, diameterMm: 6 }] } };
      const taken = { ...more, log: [{ op: 'remove-branch', branch: 'more', finish: 'collar', date }] };
      const facts = async (told: Proposal['tree']): Promise<readonly number[]> => {
        const { read } = (await judge({ tree: told, operation, date, where })).facts;
        return ['wound.widthMm', 'wound.girthShare', 'sitting.cutAreaShare'].map((id) => read(id).value as number);
      };
      const [before, stands, goes] = [await facts(tree), await facts(more), await facts(taken)];
      before.forEach((value, i) => {
        expect(stands[i]).toBeGreaterThanOrEqual(value - 1e-9);
        expect(goes[i]).toBeGreaterThanOrEqual(stands[i]! - 1e-9);
      });
    }),
    { numRuns: cases(150) },
  );
});

test('the branches of a sitting, taken in any order, are the same sitting', async () => {
  await fc.assert(
    fc.asyncProperty(plausibleTree, fc.shuffledSubarray([0, 1, 2, 3], { minLength: 2 }), async (tree, order) => {
      const taken = order.filter((i) => i < tree.structure.branches.length).map((i) => ({ op: 'remove-branch', branch: `b${i}`, finish: 'collar' }));
      fc.pre(taken.length >= 2);
      const sitting = async (operations: readonly object[]): Promise<unknown> => {
        const [first, ...others] = operations;
        const { read } = (await judge({ tree: { ...tree, log: others.map((other) => ({ ...other, date })) }, operation: first, date, where })).facts;
        return ['sitting.foliageShare', 'sitting.cutAreaShare', 'sitting.hardOperations'].map((id) => read(id));
      };
      const verdicts = async (operations: readonly { readonly branch: string }[]): Promise<unknown> =>
        await verdictOf({ ...tree, log: operations.slice(1).map((other) => ({ ...other, date })) }, operations[0]!);
      const [one, ...rest] = taken;
      expect(await sitting([one!, ...[...rest].reverse()])).toEqual(await sitting(taken));
      expect(await verdicts([one!, ...[...rest].reverse()])).toEqual(await verdicts(taken));
      const [foliage, cuts] = (await sitting(taken)) as readonly { readonly value: number }[];
      const [foliageToo, cutsToo] = (await sitting([...taken].reverse())) as readonly { readonly value: number }[];
      expect(foliageToo!.value).toBeCloseTo(foliage!.value, 2);
      expect(cutsToo!.value).toBeCloseTo(cuts!.value, 2);
    }),
    { numRuns: cases(100) },
  );
});

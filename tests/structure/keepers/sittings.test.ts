import { expect, it } from 'vitest';
import { bit, has } from '../../../src/structure/keepers/bits.js';
import { bearingOf, type Limits } from '../../../src/structure/keepers/sittings.js';
import { readStructure } from '../../../src/structure/readStructure.js';
import { inventedTree, numbersFrom } from './inventedTree.js';

const limits: Limits = { foliageShare: 0.33, sectionShare: 1 / 3, girthShare: 0.25, girthShareInAll: 0.5 };

/** Whether branches can be dealt out to sittings so that each bears its own, by trying every way. */
const canBeDealt = (places: readonly number[], sittings: number, bears: (set: number) => boolean, dealt: readonly number[] = Array.from({ length: sittings }, () => 0)): boolean =>
  places.length === 0 ? dealt.every((set) => bears(set)) : dealt.some((_, to) => canBeDealt(places.slice(1), sittings, bears, dealt.map((set, i) => (i === to ? set + bit(places[0]!) : set))));

it('branches are spread over years wherever any way of spreading them is borne, and only there', () => {
  let [borne, refused] = [0, 0];
  for (let seed = 1; borne + refused < 400; seed++) {
    const next = numbersFrom(seed * 7_907);
    const { structure, trunk } = inventedTree(seed * 31_337, 9);
    let tree: ReturnType<typeof readStructure>;
    try {
      tree = readStructure(structure, { trunk });
    } catch {
      continue;
    }
    const bearing = bearingOf(tree, limits, tree.branches);
    const inAll = bearingOf(tree, { ...limits, girthShare: limits.girthShareInAll!, foliageShare: 9, sectionShare: 9 }, tree.branches);
    const places = tree.branches.flatMap((_, i) => (next() < 0.6 ? [i] : []));
    const gone = places.reduce((set, i) => set + bit(i), 0);
    const sittings = 1 + Math.floor(next() * 3);
    const found = bearing.inSittings(gone, sittings);
    /* Three sittings that take a third each of what is left take 1 - 0.67 cubed of the whole. */
    const foliage = places.reduce((sum, i) => sum + (tree.branches[i]!.dead ? 0 : (tree.branches[i]!.foliageShare?.value ?? 0)), 0);
    const may = foliage <= 1 - (1 - limits.foliageShare!) ** sittings + 1e-9 && inAll.inSittings(gone, 1) !== undefined && canBeDealt(places, sittings, (set) => bearing.inSittings(set, 1) !== undefined);
    expect(found !== undefined, `seed ${seed}`).toBe(may);
    expect(bearing.mayBeGone(gone, sittings), `seed ${seed}`).toBe(may);
    if (found === undefined) refused++;
    else {
      borne++;
      expect(found.reduce((sum, set) => sum + set, 0)).toBe(gone);
      expect(places.every((i) => found.filter((set) => has(set, i)).length === 1)).toBe(true);
      expect(found.every((set) => bearing.inSittings(set, 1) !== undefined)).toBe(true);
    }
  }
  expect(Math.min(borne, refused)).toBeGreaterThan(50);
}, 60_000);

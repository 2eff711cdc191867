import { describe, expect, test } from 'vitest';
import { areBars, levelCloseness } from '../../src/structure/levelCloseness.js';
import { levelsOf } from '../../src/structure/levels.js';
import { readStructure } from '../../src/structure/readStructure.js';
import type { Branch, Structure } from '../../src/structure/tree.js';

/** Two branches at a height on a trunk that is equally thick all the way. */
const pair = (treeMm: number, trunkMm: number, [low, high]: readonly [number, number], [d1, d2]: readonly [number, number], sides: readonly [number, number] = [0, 180]): readonly [Structure, Branch, Branch] => {
  const structure = readStructure({
    trunks: [{ id: 't', points: [{ heightMm: 0, diameterMm: trunkMm }, { heightMm: treeMm, diameterMm: trunkMm }] }],
    branches: [{ id: 'a', heightMm: low, diameterMm: d1, azimuthDeg: sides[0] }, { id: 'b', heightMm: high, diameterMm: d2, azimuthDeg: sides[1] }],
  }, { trunk: { heightMm: treeMm } });
  return [structure, structure.branches[0]!, structure.branches[1]!];
};

describe('two branches read as one level', () => {
  test.each([
    ['six millimetres apart on a tree of 600: one level', 600, 40, [207, 213], [8, 7], 0.34],
    ['twenty millimetres apart there: staggered', 600, 40, [200, 220], [8, 7], 1.14],
    ['fourteen apart on a squat trunk of 70: nearly', 220, 70, [73, 87], [10, 9], 0.55],
    ['six apart near the top: staggered', 600, 15, [517, 523], [4, 4], 1.1],
  ] as const)('%s', (_, treeMm, trunkMm, heights, diameters, expected) => {
    expect(levelCloseness(...pair(treeMm, trunkMm, heights, diameters))).toBeCloseTo(expected, 2);
  });

  test('a gap that is clear today closes as the trunk thickens', () => {
    const [structure, a, b] = pair(600, 40, [200, 220], [8, 7]);
    expect(levelCloseness(structure, a, b)).toBeGreaterThan(1);
    expect(levelCloseness(structure, a, b, { trunkDiameterMm: 80 })).toBeLessThan(1);
  });

  test('bars stand on opposite sides, 140 degrees apart or more', () => {
    expect(areBars(...pair(600, 40, [207, 213], [8, 7], [0, 140]))).toBe(true);
    expect(areBars(...pair(600, 40, [207, 213], [8, 7], [0, 139]))).toBe(false);
    expect(areBars(...pair(600, 40, [200, 230], [8, 7], [0, 180]))).toBe(false);
  });

  test('a ladder of branches is not one whorl', () => {
    const structure = readStructure({
      trunks: [{ id: 't', points: [{ heightMm: 0, diameterMm: 30 }, { heightMm: 600, diameterMm: 30 }] }],
      branches: [100, 110, 120, 130, 140, 150, 160].map((heightMm) => ({ id: `b${heightMm}`, heightMm, diameterMm: 6 })),
    }, { trunk: { heightMm: 600 } });
    expect(levelsOf(structure).map((level) => level.length)).toEqual([4, 3]);
  });
});

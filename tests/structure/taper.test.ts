import { describe, expect, test } from 'vitest';
import { readStructure } from '../../src/structure/readStructure.js';
import { inverseTapers, tapersOf } from '../../src/structure/taper.js';
import type { Structure } from '../../src/structure/tree.js';

const points = [[0, 62], [40, 50], [120, 44], [180, 41], [200, 45], [240, 38], [400, 24], [560, 9]].map(([heightMm, diameterMm]) => ({ heightMm: heightMm!, diameterMm: diameterMm! }));
const tree = (branchHeights: readonly number[] = []): Structure => readStructure({ trunks: [{ id: 't', points }], branches: branchHeights.map((heightMm, i) => ({ id: `b${i}`, heightMm, diameterMm: 8 })) }, { trunk: { heightMm: 600 } });

describe('taper', () => {
  test('is read from point to point', () => {
    expect(tapersOf(tree().trunks[0]!).map((taper) => Math.round(taper * 1000) / 1000)).toEqual([0.3, 0.075, 0.05, -0.2, 0.175, 0.088, 0.094]);
  });

  test('a point thicker than the one below is inverse taper', () => {
    const structure = tree();
    expect(inverseTapers(structure, structure.trunks[0]!)).toEqual([{ heightMm: 200, thicker: 45 / 41 }]);
  });

  test('at a whorl it is a bulge, measured against its neighbours', () => {
    const structure = tree([200, 202, 204]);
    expect(inverseTapers(structure, structure.trunks[0]!)?.[0]?.bulge).toBeCloseTo(1.125, 3);
  });

  test('what measuring may be off by is none', () => {
    const structure = readStructure({ trunks: [{ id: 't', points: [{ heightMm: 0, diameterMm: 41 }, { heightMm: 20, diameterMm: 42.2 }] }] });
    expect(inverseTapers(structure, structure.trunks[0]!)).toEqual([]);
  });

  test('is not known of a trunk whose points were not told', () => {
    const structure = readStructure({ branches: [] }, { trunk: { diameterMm: 40, heightMm: 300 } });
    expect(inverseTapers(structure, structure.trunks[0]!)).toBeUndefined();
  });
});

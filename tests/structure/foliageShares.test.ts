import { describe, expect, test } from 'vitest';
import { pipeShares, shareRange, trunkBelowMm } from '../../src/structure/foliageShares.js';

const diameters = [9, 7, 6, 5, 8];

describe('what diameters say of foliage', () => {
  test('shares go with the sections of branches and top', () => {
    expect(pipeShares(diameters).map((share) => Math.round(share * 1000) / 1000)).toEqual([0.318, 0.192, 0.141, 0.098, 0.251]);
  });

  test('the power of the rule moves them little', () => {
    expect(pipeShares(diameters, 1.8)[0]).toBeCloseTo(0.305, 3);
    expect(pipeShares(diameters, 1.8)[3]).toBeCloseTo(0.106, 3);
    expect(pipeShares(diameters, 2.3)[0]).toBeCloseTo(0.336, 3);
    expect(pipeShares(diameters, 2.3)[3]).toBeCloseTo(0.087, 3);
  });

  test('the trunk below is as thick as all of them together', () => {
    expect(trunkBelowMm(diameters)).toBeCloseTo(15.97, 2);
    expect(trunkBelowMm(diameters, 1.8)).toBeCloseTo(17.39, 2);
    expect(trunkBelowMm(diameters, 2.3)).toBeCloseTo(14.46, 2);
    expect(trunkBelowMm([22, 24])).toBeCloseTo(32.6, 1);
  });

  test.each([[0.1, 0.06, 0.15], [0.2, 0.13, 0.29], [0.32, 0.22, 0.44], [0.5, 0.38, 0.62]])('a share of %f may be from %f to %f', (share, atLeast, atMost) => {
    expect(shareRange(share).atLeast).toBeCloseTo(atLeast, 2);
    expect(shareRange(share).atMost).toBeCloseTo(atMost, 2);
  });
});

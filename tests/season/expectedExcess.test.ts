import { describe, expect, it } from 'vitest';
import { expectedExcess } from '../../src/season/expectedExcess.js';
import { normalShare } from '../../src/season/normalCurve.js';

describe('the share of a normal distribution', () => {
  // Against: tabled values (any statistics handbook).
  it.each([[0, 0.5], [1, 0.8413447], [1.96, 0.9750021], [-1.6448536, 0.05], [3, 0.9986501]])('below %d is %d', (z, share) => {
    expect(normalShare(z)).toBeCloseTo(share, 6);
  });
});

describe('days above a base', () => {
  it('are the plain excess without scatter, and 0.399 standard deviations with the mean on the base', () => {
    expect(expectedExcess(8, 5, 0)).toBe(3);
    expect(expectedExcess(2, 5, 0)).toBe(0);
    expect(expectedExcess(5, 5, 4)).toBeCloseTo(4 * 0.3989423, 6);
  });

  it('never fall under the plain excess, and grow with warmth and with scatter', () => {
    for (const mean of [-10, -3, 0, 4, 5, 6, 15, 40]) {
      for (const spread of [0.5, 2, 5]) {
        const excess = expectedExcess(mean, 5, spread);
        expect(excess).toBeGreaterThanOrEqual(Math.max(0, mean - 5) - 1e-6);
        expect(expectedExcess(mean + 1, 5, spread)).toBeGreaterThanOrEqual(excess);
        expect(expectedExcess(mean, 5, spread + 1)).toBeGreaterThanOrEqual(excess - 1e-6);
      }
    }
  });
});

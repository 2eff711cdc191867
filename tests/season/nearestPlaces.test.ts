import { describe, expect, it } from 'vitest';
import { nearestPlaces } from '../../src/season/nearestPlaces.js';
import { stations } from './stations.js';

describe('places nearest to a point', () => {
  it('come in order of distance', () => {
    const near = nearestPlaces(35.7, 139.7, stations, 3);
    expect(near[0]?.station.id).toBe('tokyo-japan');
    expect(near[0]?.km).toBeLessThan(15);
    expect(near.map((one) => one.km)).toEqual(near.map((one) => one.km).sort((a, b) => a - b));
  });

  it('know that the date line is no wall', () => {
    expect(nearestPlaces(-36.85, -185.23, stations, 1)[0]?.station.name).toBe('Auckland');
  });
});

import { describe, expect, it } from 'vitest';
import { findPlaces, nearestPlaces } from '../../src/season/findPlaces.js';
import { stations } from './stations.js';

const names = (query: string): readonly string[] => findPlaces(query, stations).map((station) => station.name);

describe('places', () => {
  it('are found by name whatever the accents and capitals', () => {
    expect(names('TÓKYÓ')[0]).toBe('Tokyo');
    expect(names('zürich')[0]).toBe('Zurich');
    expect(names('umeå')[0]).toBe('Umea');
  });

  it('are found by any words, in any order, and by country', () => {
    expect(names('paul minneapolis')[0]).toBe('Minneapolis-St Paul MN');
    expect(names('new zealand').length).toBe(3);
  });

  it('are not found by nothing or by nonsense', () => {
    expect(names('')).toEqual([]);
    expect(names('qqxz')).toEqual([]);
  });

  it('nearest to a point come in order of distance', () => {
    const near = nearestPlaces(35.7, 139.7, stations, 3);
    expect(near[0]?.station.id).toBe('tokyo-japan');
    expect(near[0]?.km).toBeLessThan(15);
    expect(near.map((one) => one.km)).toEqual(near.map((one) => one.km).sort((a, b) => a - b));
  });

  it('know that the date line is no wall', () => {
    expect(nearestPlaces(-36.85, -185.23, stations, 1)[0]?.station.name).toBe('Auckland');
  });
});

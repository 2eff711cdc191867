import { describe, expect, it } from 'vitest';
import { findPlaces } from '../../src/season/findPlaces.js';
import { stations } from './stations.js';

const names = (query: string): readonly string[] => findPlaces(query, stations).map((station) => station.name);

describe('places', () => {
  it('are found by name whatever the accents and capitals', () => {
    expect(names('TÓKYÓ')[0]).toBe('Tokyo');
    expect(names('zürich')[0]).toBe('Zurich');
    expect(names('umeå')[0]).toBe('Umea');
  });

  it('are found with an umlaut or with it spelt out', () => {
    for (const written of ['Köln', 'koeln', 'KOELN']) expect(names(written)[0]).toBe('Koeln (Cologne)');
    expect(names('zuerich')[0]).toBe('Zurich');
  });

  it('are found by any words, in any order, and by country', () => {
    expect(names('paul minneapolis')[0]).toBe('Minneapolis-St Paul MN');
    expect(names('new zealand').length).toBe(3);
  });

  it('are not found by nothing or by nonsense', () => {
    expect(names('')).toEqual([]);
    expect(names('qqxz')).toEqual([]);
  });
});

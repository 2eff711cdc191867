import { afterAll, describe, expect, it } from 'vitest';
import type { Trait } from '../../src/knowledge/knowledge.js';
import { shipped } from '../shipped.js';
import { firstHundred } from './firstHundred.js';

const chainOf = (id: string | undefined): readonly string[] => (id === undefined ? [] : [id, ...chainOf(shipped.species[id]!.parent)]);
const generaUnder = (group: string): ReadonlySet<string> => new Set(Object.values(shipped.species).filter(({ id, rank }) => rank !== 'group' && chainOf(id).includes(group)).map(({ name }) => name.split(' ')[0]!));
/* A group that parts one genus, as the two of pines do, says of that genus what it says. */
const manyGenera = new Set(Object.values(shipped.species).filter(({ id, rank }) => rank === 'group' && generaUnder(id).size > 1).map(({ id }) => id));
const ownOf = (id: string): readonly Trait[] => Object.values(shipped.species[id]?.traits ?? {}).filter((trait) => !manyGenera.has(trait.level));
const isRead = (trait: Trait): boolean => trait.sources.some((id) => shipped.sources[id]!.from === 'read');

const counts = firstHundred.map((id) => ({ id, own: ownOf(id).length, read: ownOf(id).filter(isRead).length }));

// A trait counts where the taxon or its genus says it; what only a group of many genera says is a default.
describe('the hundred trees that are asked about most', () => {
  it('are all there', () => {
    expect(new Set(firstHundred).size).toBe(100);
    expect(firstHundred.filter((id) => shipped.species[id] === undefined)).toEqual([]);
  });

  it('have at least six traits that the genus or the taxon says, each with its source', () => expect(counts.filter((one) => one.own < 6)).toEqual([]));

  /* Nothing was read of many Asian and tropical kinds; the figure may only grow. */
  it('have six that were read in a published source in more than half of the cases', () => expect(counts.filter((one) => one.read >= 6).length).toBeGreaterThanOrEqual(76));
});

afterAll(() => {
  const few = counts.filter((one) => one.read < 6).map((one) => `${one.id} ${one.read}`);
  process.stdout.write(`traits said by genus or taxon, first hundred: fewest ${Math.min(...counts.map((one) => one.own))}; six or more read: ${100 - few.length}; fewer: ${few.join(', ')}\n`);
});

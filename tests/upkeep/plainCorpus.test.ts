import { describe, expect, test } from 'vitest';
import { plainCorpus } from '../../src/upkeep/plainCorpus.js';
import { root, shipped } from '../shipped.js';

interface Plain {
  readonly tree: { readonly species: string; readonly vigour: string };
  readonly operation: { readonly op: string };
  readonly date: string;
  readonly where: unknown;
}

const every = plainCorpus(shipped, `${root}tests/corpus.yaml`) as unknown as readonly Plain[];
const taxa = Object.values(shipped.species).filter(({ rank }) => rank === 'taxon').length;
const operations = Object.values(shipped.operations);
const ways = operations.reduce((sum, { usual }) => sum + usual.length, 0);
const month = ({ date }: Plain): string => date.slice(5, 7);
const different = (told: (proposal: Plain) => readonly unknown[]): number => new Set(every.map((proposal) => JSON.stringify(told(proposal)))).size;

describe('the ordinary proposals that two states of the knowledge are compared with', () => {
  test('ask of each species each operation', () => expect(different(({ tree, operation }) => [tree.species, operation.op])).toBe(taxa * operations.length));

  test('ask of each species in each month, at each vigour', () => expect(different((one) => [one.tree.species, month(one), one.tree.vigour])).toBe(taxa * 12 * 3));

  test('ask for each operation in each month, at each vigour', () => expect(different((one) => [one.operation.op, month(one), one.tree.vigour])).toBe(operations.length * 12 * 3));

  test('try each way of doing it at each vigour, in each month and at each place', () => {
    const places = different(({ where }) => [where]);
    expect(places).toBeGreaterThanOrEqual(6);
    expect(different(({ operation, tree }) => [operation, tree.vigour])).toBe(ways * 3);
    expect(different((one) => [one.operation, month(one)])).toBe(ways * 12);
    expect(different(({ operation, where }) => [operation, where])).toBe(ways * places);
  });

  test('are the same each time', () => expect(plainCorpus(shipped, `${root}tests/corpus.yaml`)).toEqual(every));
});

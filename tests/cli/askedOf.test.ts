import { expect, test } from 'vitest';
import { askedOf } from '../../src/cli/askedOf.js';
import { SparebudError } from '../../src/knowledge/error.js';
import { shipped } from '../shipped.js';

const issuesOf = async (asked: Promise<unknown>): Promise<readonly string[]> => await asked.then(() => [], (cause: unknown) => (cause instanceof SparebudError ? cause.issues.map(({ path, help }) => `${path}: ${help!}`) : Promise.reject(cause as Error)));

test('the operation and the species may come in either order, trade names too', async () => {
  const meant = { operation: { op: 'root pruning' }, tree: { species: 'trident maple' } };
  expect(await askedOf(undefined, { op: 'root pruning', species: 'trident maple' }, {}, shipped)).toEqual(meant);
  expect(await askedOf(undefined, { op: 'trident maple', species: 'root pruning' }, {}, shipped)).toEqual(meant);
});

test('a misspelt operation stays where it was written, so that its near miss is told', async () => {
  expect(await askedOf(undefined, { op: 'repott', species: 'trident maple' }, {}, shipped)).toEqual({ operation: { op: 'repott' }, tree: { species: 'trident maple' } });
});

test('a number may have a unit of its own, in a flag and in a setting', async () => {
  const asked = await askedOf(undefined, { op: 'repot', species: 'elm' }, { rootsRemoved: '40%', trunkDiameterMm: '2in', set: ['where.elevationM=1000ft', 'tree.trunk.heightMm=30cm'] }, shipped);
  expect(asked).toEqual({ operation: { op: 'repot', rootsRemoved: 0.4 }, tree: { species: 'elm', trunk: { diameterMm: 50.8, heightMm: 300 } }, where: { elevationM: 304.8 } });
});

test('a question without a species or an operation says how to name one', async () => {
  expect(await issuesOf(askedOf(undefined, {}, {}, shipped))).toEqual([expect.stringContaining('operation: name one, as in'), expect.stringContaining('tree.species: name it, as in')]);
  expect(await issuesOf(askedOf(undefined, { op: 'repot' }, {}, shipped))).toEqual([expect.stringContaining('tree.species: name it')]);
});

test('a setting that sets nothing is refused', async () => {
  expect(await issuesOf(askedOf({}, {}, { set: ['tree.vigour'] }, shipped))).toEqual(['--set: write it as path=value, such as --set tree.vigour=strong']);
});

import { stripVTControlCharacters } from 'node:util';
import { expect, test } from 'vitest';
import { printAssessment } from '../../src/cli/printAssessment.js';
import { advisor, shipped } from '../shipped.js';

const printed = async (proposal: object): Promise<string> => stripVTControlCharacters(printAssessment(await advisor.assess(proposal), shipped, { width: 200, units: 'metric', full: false }));

test('what is taken for granted is told in the words that its answers have: no, not false', async () => {
  expect(await printed({ tree: { species: 'pinus-parviflora', health: 'sound' }, operation: { op: 'take-cuttings', wood: 'softwood' }, date: '2027-06-10', where: { latitude: 35, longitude: 135.8 } })).toMatch(/carry roots already: no \(yes: allowed\)/);
});

test('one bud is one bud', async () => {
  const text = await printed({ tree: { species: 'prunus-mume', vigour: 'strong', health: 'sound', flower: 'over' }, operation: { op: 'cut-back', budsLeft: 0, foliageLeft: false, woodAge: 'last-year', branchDiameterMm: 4 }, date: '2027-03-08', where: { latitude: 35, longitude: 135.8 } });
  expect(text).toContain('leaving one bud: allowed');
  expect(text).not.toContain('1 buds');
});

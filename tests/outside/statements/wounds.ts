import { expect } from 'vitest';
import type { Assessment } from '../../../src/contract/types.generated.js';
import { albany, cambridge, type Ask, type Statement } from './statement.js';

const closure = (assessment: Assessment): readonly [number, number] => assessment.expect.closureYears as [number, number];

const ground = { growing: 'ground', stage: 'developing', vigour: 'strong' } as const;
const bigElm = { species: 'ulmus-minor', ...ground, trunk: { diameterMm: 100 } };
const bigAsh = { species: 'fraxinus', ...ground, trunk: { diameterMm: 100 } };
const wide = { op: 'remove-branch', branchDiameterMm: 30, finish: 'collar', foliageShare: 0.05 };
const elmInPot = { species: 'ulmus-parvifolia', growing: 'bonsai-pot', stage: 'developing', vigour: 'strong', trunk: { diameterMm: 60 } } as const;
const slow = (growing: 'ground' | 'bonsai-pot') => ({ species: 'pinus-sylvestris', growing, stage: 'developing', vigour: 'steady', trunk: { diameterMm: 150 } }) as const;
const fortyMm = { op: 'remove-branch', branchDiameterMm: 40, finish: 'collar', foliageShare: 0.05 };
const oneOfRatio = (species: string, branchToTrunk: number, date: string, where: Ask['where']) =>
  ({ tree: { species, ...ground, trunk: { diameterMm: 60 } }, operation: { op: 'remove-branch', branchToTrunk, finish: 'collar', foliageShare: 0.05 }, date, where }) as const;

export const wounds: readonly Statement[] = [
  {
    row: 1, says: 'A 10 mm cut on a vigorous tree in the ground closes within about a year',
    sources: ['neely-1979', 'neely-1988-closure'], published: 'Neely 1979, J. Arboric. 5(6):135; Neely 1988, J. Arboric. 14(6):148 (under 12 mm within one year)',
    asks: [{
      tree: { species: 'ulmus-parvifolia', ...ground, trunk: { diameterMm: 60 } }, operation: { op: 'remove-branch', branchDiameterMm: 10, finish: 'collar', foliageShare: 0.05 }, date: '2026-03-05', where: cambridge,
      accept: ['allowed'], traits: ['healing.ingrowthMm'],
      also: (assessment) => { const [soonest, latest] = closure(assessment); expect(soonest).toBeGreaterThanOrEqual(0.3); expect(latest).toBeLessThanOrEqual(1.2); },
    }],
  },
  {
    row: 2, says: 'A 40 mm cut on a slow grower in the ground stays open for four or five seasons or more',
    sources: ['neely-1979'], published: 'Neely 1979, J. Arboric. 5(6):135: 9.5 mm a season at modest growth, hence 4.2 seasons for 40 mm',
    /* The statement is about the figure; whether that matters on a trunk that is still to thicken is left open. */
    asks: ['pinus-sylvestris', 'taxus-baccata', 'fagus-sylvatica'].map((species) => ({
      tree: { ...slow('ground'), species }, operation: fortyMm, date: '2026-12-05', where: cambridge, accept: ['allowed', 'risky'] as const, traits: ['healing.ingrowthMm'], also: (assessment) => expect((closure(assessment)[0] + closure(assessment)[1]) / 2).toBeGreaterThanOrEqual(4),
    })),
  },
  {
    row: 2, says: 'In a pot a 40 mm cut on a slow grower is a risk, better made in stages',
    sources: ['neely-1979'], published: 'Neely 1979, J. Arboric. 5(6):135',
    asks: [{ tree: slow('bonsai-pot'), operation: fortyMm, date: '2026-03-05', where: cambridge, accept: ['risky'], because: ['wound/slow-to-close'], also: (assessment) => expect(closure(assessment)[0]).toBeGreaterThanOrEqual(5) }],
  },
  {
    row: 3, says: 'A large cut made in autumn is the slowest to close, and spring before leaf-out is better',
    sources: ['perry-hickman-1987'], published: 'Perry & Hickman 1987, J. Arboric. 13(8):201: their own wounds on river red gum, slowest from late autumn on',
    /* The paper ranks the seasons; whether the slowest is merely a cost or plainly worse is ours to say. */
    asks: [
      { tree: bigAsh, operation: wide, date: '2026-10-25', where: cambridge, accept: ['risky', 'advise-against'], because: ['wound/autumn'] },
      { tree: bigElm, operation: wide, date: '2026-10-25', where: cambridge, accept: ['risky', 'advise-against'], because: ['wound/autumn'] },
    ],
  },
  {
    row: 4, says: 'The same cut as growth is about to start closes fastest, and may be made',
    sources: ['perry-hickman-1987'], published: 'Perry & Hickman 1987, J. Arboric. 13(8):201: their own wounds on river red gum, fastest in spring',
    asks: [
      { tree: bigAsh, operation: wide, date: '2026-03-25', where: cambridge, accept: ['allowed'], silent: ['wound/autumn'] },
      { tree: { ...bigElm, species: 'quercus-rubra' }, operation: wide, date: '2026-03-25', where: cambridge, accept: ['allowed'], silent: ['wound/autumn'] },
    ],
  },
  {
    row: 5, says: 'A clean cut needs no sealing: sealed or not, it is judged and closes the same',
    sources: ['shigo-shortle-1983'], published: 'Shigo & Shortle 1983, J. Arboric. 9(12):317 (275 trees, 13 years)',
    asks: [false, true].map((sealed) => ({
      tree: elmInPot, operation: { op: 'remove-branch', branchDiameterMm: 12, finish: 'collar', foliageShare: 0.05, sealed }, date: '2026-03-05', where: cambridge,
      accept: ['allowed'] as const, also: (assessment: Assessment, all: readonly Assessment[]) => { expect(closure(assessment)[1]).toBeLessThan(3); for (const other of all) expect(closure(other)).toEqual(closure(assessment)); },
    })),
  },
  {
    row: 6, says: 'A flush cut through the collar is always wrong',
    sources: ['dujesiefken-stobbe-2002', 'ohara-2007'], published: 'Dujesiefken & Stobbe 2002, Urban For. Urban Green. 1:75; dissent O\'Hara 2007, J. Forestry 105(3)',
    overridden: 'A concave or flush cut leaves no lump on a trunk that is looked at from a hand away. The wider wound and the rot of the species decide, never the finish alone.',
    asks: [
      { tree: elmInPot, operation: { op: 'remove-branch', branchDiameterMm: 12, finish: 'flush', foliageShare: 0.05 }, date: '2026-03-05', where: cambridge, accept: ['allowed'], also: (assessment) => expect(closure(assessment)[1]).toBeGreaterThan(1.7) },
      { tree: { ...elmInPot, species: 'betula-pendula', vigour: 'steady' }, operation: { op: 'remove-branch', branchDiameterMm: 15, finish: 'flush', foliageShare: 0.05 }, date: '2026-07-20', where: cambridge, accept: ['risky'], because: ['wound/flush-into-weak-wood'] },
    ],
  },
  {
    row: 7, says: 'A branch of 0.7 of the trunk must not come off in one cut',
    sources: ['eisner-2002', 'uf-gilman-guide'], published: 'Eisner, Gilman & Grabosky 2002, J. Arboric. 28(2):99; Gilman, University of Florida pruning guide',
    overridden: 'Taking off a thick branch is often the very point of building a trunk: risky at most, and the finding says why.',
    asks: [{ ...oneOfRatio('acer-rubrum', 0.7, '2026-07-10', albany), accept: ['risky'], because: ['cut/thick-branch'] }],
  },
  {
    row: 8, says: 'A branch of a quarter of the trunk, cut at a clear collar, may come off',
    sources: ['gilman-grabosky-2006'], published: 'Gilman & Grabosky 2006, Arboric. Urban For. 32:74: less discoloration than from codominant stems',
    asks: [
      { ...oneOfRatio('acer-rubrum', 0.25, '2026-07-10', albany), accept: ['allowed'], silent: ['cut/thick-branch'] },
      { ...oneOfRatio('quercus-virginiana', 0.25, '2026-03-01', { place: 'gainesville-11-wnw-fl' }), accept: ['allowed'], silent: ['cut/thick-branch'] },
    ],
  },
  {
    row: 11, says: 'Cuts of more than a third of the trunk\'s section are a severe pruning',
    sources: ['bs-3998-2008-draft'], published: 'BS 3998, draft of 2008, Annex E (sum of squared diameters over the squared trunk)',
    asks: [
      { tree: { species: 'ulmus-parvifolia', ...ground, trunk: { diameterMm: 60 } }, operation: { op: 'remove-branch', branchDiameterMm: 37, finish: 'collar', foliageShare: 0.1 }, date: '2026-03-05', where: cambridge, accept: ['risky'], because: ['wound/area-severe'],
        also: (assessment) => expect(assessment.findings.flatMap((finding) => finding.facts).find((fact) => fact.fact === 'sitting.cutAreaShare')?.value).toBeCloseTo(37 ** 2 / 60 ** 2, 2) },
      { tree: { species: 'ulmus-parvifolia', ...ground, trunk: { diameterMm: 60 } }, operation: { op: 'remove-branch', branchDiameterMm: 30, finish: 'collar', foliageShare: 0.1 }, date: '2026-03-05', where: cambridge, accept: ['allowed'], silent: ['wound/area-severe'] },
    ],
  },
  {
    row: 12, says: 'Cutting back to a side branch of a quarter of the stem is a heading cut, and wrong',
    sources: ['fort-carson-guide', 'bs-3998-1989'], published: 'US Army design guide, Fort Carson; BS 3998:1989 (at least a third)',
    overridden: 'A trunk is chopped to a thin leader on purpose, to build taper; how well the species buds back decides. Risky, with the third as its limit.',
    asks: [15, 24].map((leader) => ({
      tree: { species: 'ulmus-parvifolia', ...ground, trunk: { diameterMm: 60 } }, operation: { op: 'trunk-chop', foliageLeft: true, branchDiameterMm: leader, foliageShare: 0.4 }, date: '2026-03-05', where: cambridge,
      ...(leader < 20 ? { accept: ['risky'] as const, because: ['chop/leader-too-thin'] } : { accept: ['allowed'] as const, silent: ['chop/leader-too-thin'] }),
    })),
  },
];

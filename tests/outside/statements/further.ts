import { expect } from 'vitest';
import { albany, cambridge, munich, type Statement } from './statement.js';

const strong = (species: string) => ({ species, vigour: 'strong', stage: 'developing' }) as const;
const inPot = (species: string) => ({ species, vigour: 'steady', stage: 'developing', growing: 'bonsai-pot' }) as const;
const bare = { op: 'cut-back', foliageLeft: false, woodAge: 'old', foliageShare: 0.1 };
const ground = (species: string, vigour: 'steady' | 'strong' | 'weak') => ({ species, vigour, growing: 'ground', stage: 'developing', trunk: { diameterMm: 120 } }) as const;
const collarCut = (branchDiameterMm: number) => ({ op: 'remove-branch', branchDiameterMm, finish: 'collar', foliageShare: 0.05 });

export const further: readonly Statement[] = [
  {
    row: 41, says: 'A red maple that made longer shoots last year closes its wounds sooner',
    sources: ['red-maple-wound-response'], published: 'Variation in wound response among cultivars of red maple, abstract',
    asks: (['strong', 'steady', 'weak'] as const).map((vigour) => ({
      tree: ground('acer-rubrum', vigour), operation: collarCut(20), date: '2026-07-10', where: albany, accept: ['allowed', 'risky'] as const, traits: ['healing.ingrowthMm'],
      also: (_, all) => { const latest = all.map((one) => one.expect.closureYears![1]!); expect(latest[0]!).toBeLessThan(latest[1]!); expect(latest[1]!).toBeLessThan(latest[2]!); },
    })),
  },
  {
    row: 42, says: 'A true fir is sheared once its shoots have stopped, in July or August',
    sources: ['hinesley-2018'], published: 'Hinesley, Deal & Deal 2018, Forests 9:246',
    asks: [{ tree: strong('abies-lasiocarpa'), operation: { op: 'trim', shareRemoved: 0.2 }, date: '2026-07-28', where: munich, accept: ['allowed', 'risky'], also: (assessment) => expect(assessment.findings.filter((finding) => finding.costs !== 'looks')).toEqual([]) }],
  },
  {
    row: 43, says: 'A spruce or a fir cut behind its green does not come again',
    sources: ['cregg-conifers'], published: 'B. Cregg, Michigan State University, notes on pruning conifers, Fine Gardening',
    asks: ['picea-abies', 'picea-glauca', 'abies-lasiocarpa'].map((species) => ({ tree: strong(species), operation: bare, date: '2026-05-30', where: munich, accept: ['advise-against'] as const, because: ['cut/no-buds-to-come'], traits: ['budding.bareWood'] })),
  },
  {
    row: 44, says: 'A larch that loses its leader above living side shoots makes a new one',
    sources: ['larix-laricina-crown'], published: 'Crown architecture of Larix laricina, abstract: side buds just below replaced the leader in one season',
    asks: ['larix-laricina', 'larix-decidua'].map((species) => ({
      tree: { ...strong(species), trunk: { diameterMm: 30 } }, operation: { op: 'trunk-chop', foliageLeft: true, branchDiameterMm: 14, foliageShare: 0.3 }, date: '2026-03-20', where: munich, accept: ['allowed', 'risky'] as const, silent: ['chop/stump-dies', 'chop/stump-may-die', 'chop/stump-unsure'], traits: ['budding.stump'],
    })),
  },
  {
    row: 45, says: 'A red maple kept from the cold hardly breaks its buds',
    sources: ['wilson-2002'], published: 'Wilson et al. 2002, J. Arboric. 28(3):148: with 200 hours of cold it takes over 1,700 heat units to bud break, with 1,000 a few hundred',
    asks: [
      { tree: inPot('acer-rubrum'), operation: { op: 'overwinter', placement: 'heated-room' }, date: '2026-12-10', where: albany, accept: ['advise-against'], because: ['warm/no-winter'], traits: ['rest.need'] },
      { tree: inPot('acer-rubrum'), operation: { op: 'overwinter', placement: 'cool-room', lowestC: -2, highestC: 6 }, date: '2026-12-10', where: albany, accept: ['allowed'], silent: ['warm/no-winter'] },
    ],
  },
  {
    row: 46, says: 'Whoever prunes a yew is told that it poisons people and animals',
    sources: ['rhs-524'], published: 'RHS, poisonous garden plants, advice 524: gloves, and keep the prunings from animals',
    asks: ['taxus-baccata', 'taxus-cuspidata'].map((species) => ({
      tree: strong(species), operation: { op: 'trim', shareRemoved: 0.15 }, date: '2026-06-20', where: cambridge, accept: ['allowed', 'risky'] as const, traits: ['hazards.eaten'],
      also: (assessment) => expect(assessment.cautions.map((caution) => caution.id)).toEqual(expect.arrayContaining(['poison-people', 'poison-livestock'])),
    })),
  },
  {
    row: 47, says: 'Whoever cuts a fig is told that its sap burns skin in the sun',
    sources: ['mess-ficus-sap'], published: 'A page on Ficus sap and burns in the sun, after Mandalia 2008',
    asks: [{ tree: strong('ficus-carica'), operation: collarCut(10), date: '2026-03-10', where: cambridge, accept: ['allowed', 'risky'], traits: ['hazards.skin'], also: (assessment) => expect(assessment.cautions.map((caution) => caution.id)).toContain('sap-burns') }],
  },
  {
    row: 48, says: 'An apple bears the loss of a third of its roots',
    sources: ['good-fruit-grower'], published: 'Good Fruit Grower: orchards take about a third to hold vigour back',
    /* Orchards do it in bloom, to check growth; the check is of how much, at the time when a tree in a pot has it done. */
    asks: ['malus-sylvestris', 'malus-domestica'].map((species) => ({ tree: inPot(species), operation: { op: 'repot', rootsRemoved: 0.33, soilRemoved: 'some' }, date: '2026-03-15', where: cambridge, accept: ['allowed'] as const, silent: ['roots/too-many', 'roots/far-too-many'], traits: ['roots.maxRemoved'] })),
  },
  {
    row: 49, says: 'A Monterey pine that loses some of its lower needles is little the worse',
    sources: ['radiata-defoliation'], published: 'Lower-crown defoliation of Pinus radiata, Ann. Bot., abstract: no loss, or less than a season of growth',
    asks: [{ tree: { ...strong('pinus-radiata'), stage: 'refined' }, operation: { op: 'needle-pluck', shareRemoved: 0.2 }, date: '2026-10-20', where: cambridge, accept: ['allowed', 'risky'], silent: ['needles/too-few-left', 'foliage/far-too-much'] }],
  },
  {
    row: 50, says: 'A wound on a wild cherry takes the longer the wider the branch was',
    sources: ['sheppard-2016'], published: 'Sheppard et al. 2016, Ann. Silvic. Res. 40(2): branch diameter and growth predict the years to closing; keep below 25 mm',
    asks: [12, 24, 36].map((width) => ({
      tree: ground('prunus-avium', 'steady'), operation: collarCut(width), date: '2026-07-10', where: munich, accept: ['allowed', 'risky'] as const, traits: ['healing.ingrowthMm'],
      also: (_, all) => { const latest = all.map((one) => one.expect.closureYears![1]!); expect(latest[0]!).toBeLessThan(latest[1]!); expect(latest[1]!).toBeLessThan(latest[2]!); },
    })),
  },
];

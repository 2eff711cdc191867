import { expect } from 'vitest';
import { albany, cambridge, munich, type Ask, type Statement } from './statement.js';

const strong = (species: string, stage: 'developing' | 'refined' = 'developing') => ({ species, vigour: 'strong', stage }) as const;
const bare = { op: 'cut-back', foliageLeft: false, woodAge: 'old', foliageShare: 0.1 };
const stump = { op: 'trunk-chop', foliageLeft: false, foliageShare: 1 };
const intoBareYew = (species: string): Ask => ({
  tree: strong(species), operation: { ...bare, foliageShare: 0.2 }, date: '2026-05-30', where: cambridge, accept: ['allowed'], silent: ['cut/no-buds-to-come', 'cut/few-buds-to-come'], traits: ['budding.bareWood'],
  also: (assessment) => expect(assessment.expect.backBudding).toBe('likely'),
});
const half = { op: 'candle-pinch', shareRemoved: 0.5 };
const strip = { op: 'defoliate', shareRemoved: 1 };

export const foliage: readonly Statement[] = [
  {
    row: 20, says: 'A pine shoot cut behind its last needles has no buds left to grow from',
    sources: ['conifers-dk-pinus', 'kujawski-2022'], published: 'conifers.dk, page on Pinus; R. Kujawski, Berkshire Eagle, 8 June 2022',
    asks: [{ tree: strong('pinus-strobus'), operation: bare, date: '2026-10-10', where: albany, accept: ['advise-against'], because: ['cut/no-buds-to-come'], traits: ['budding.bareWood'] }],
  },
  {
    row: 20, says: 'A young pine chopped below its last needles is lost',
    sources: ['conifers-dk-pinus'], published: 'conifers.dk, page on Pinus: no meristem lies on the bare shoot',
    asks: [{ tree: strong('pinus-sylvestris'), operation: stump, date: '2026-03-10', where: munich, accept: ['advise-against'], because: ['chop/stump-dies'], traits: ['budding.stump'] }],
  },
  {
    row: 21, says: 'An English yew is cut hard into bare wood from late May into June',
    sources: ['ebts-yew'], published: 'EBTS, yew tips: hard after frosts, end of May to June',
    asks: [intoBareYew('taxus-baccata')],
  },
  {
    row: 21, says: 'So is a Japanese yew',
    sources: ['ebts-yew'], published: 'EBTS, yew tips: hard after frosts, end of May to June',
    asks: [intoBareYew('taxus-cuspidata')],
  },
  {
    row: 22, says: 'A juniper cut into its brown inside does not come again',
    sources: ['cregg-conifers'], published: 'B. Cregg, Michigan State University, notes on pruning conifers, Fine Gardening; dissent J. Cushnie, Irish Times',
    asks: [{ tree: strong('juniperus-chinensis'), operation: bare, date: '2026-05-30', where: cambridge, accept: ['risky', 'advise-against'], because: ['cut/no-buds-to-come'], traits: ['budding.bareWood'] }],
  },
  {
    row: 23, says: 'A false cypress cut into bare wood does not come again',
    sources: ['guardian-2002'], published: 'Guardian, 19 January 2002: cypresses do not break from old wood',
    asks: ['chamaecyparis-obtusa', 'chamaecyparis-pisifera'].map((species) => ({ tree: strong(species), operation: bare, date: '2026-05-30', where: cambridge, accept: ['advise-against'] as const, because: ['cut/no-buds-to-come'], traits: ['budding.bareWood'] })),
  },
  {
    row: 24, says: 'Pine candles are halved while soft, and left alone once the needles are ripe',
    sources: ['goodspeed-candles'], published: 'J. Goodspeed, Utah State University, KSL', restsOn: ['wadena-pioneer'],
    asks: [
      { tree: strong('pinus-mugo', 'refined'), operation: half, date: '2026-05-15', where: munich, accept: ['allowed'], silent: ['candles/pinch-hardened', 'candles/pinch-too-short'] },
      { tree: strong('pinus-mugo', 'refined'), operation: half, date: '2026-08-15', where: munich, accept: ['advise-against'], because: ['candles/pinch-hardened'] },
    ],
  },
  {
    row: 25, says: 'A redwood comes again from its stump',
    sources: ['wiant-1967'], published: 'Wiant 1967, Tree Planters\' Notes 18(2) (up to 95 % of stumps)', restsOn: ['ohara-2017', 'fvs-sprouting', 'usda-plants-characteristics'],
    asks: [
      { tree: strong('sequoia-sempervirens'), operation: stump, date: '2026-03-01', where: { place: 'ft-bragg-5-n-ca' }, accept: ['allowed'], silent: ['chop/stump-dies', 'chop/stump-may-die', 'chop/stump-unsure'], traits: ['budding.stump'] },
    ],
  },
  {
    row: 25, says: 'A Japanese cedar probably does',
    sources: ['cryptomeria-garden-press'], published: 'Garden press on Cryptomeria',
    asks: [{ tree: strong('cryptomeria-japonica'), operation: stump, date: '2026-03-20', where: { place: 'tokyo-japan' }, accept: ['allowed', 'risky'], silent: ['chop/stump-dies'], traits: ['budding.stump'] }],
  },
  {
    row: 26, says: 'A pine or spruce stripped of all its needles may die of it',
    sources: ['ohio-agriculture-defoliation'], published: 'Ohio Department of Agriculture: conifers often die after the first heavy loss', restsOn: ['scots-pine-defoliation'],
    asks: ['pinus-sylvestris', 'picea-abies'].map((species) => ({ tree: strong(species, 'refined'), operation: { op: 'needle-pluck', shareRemoved: 1 }, date: '2026-08-01', where: munich, accept: ['advise-against'] as const, because: ['needles/too-few-left'] })),
  },
  {
    row: 26, says: 'Nor is leaf removal a work for a pine',
    sources: ['ohio-agriculture-defoliation'], published: 'Ohio Department of Agriculture: conifers often die after the first heavy loss',
    asks: [{ tree: strong('pinus-sylvestris', 'refined'), operation: strip, date: '2026-08-01', where: munich, accept: ['advise-against'], because: ['defoliate/never'] }],
  },
  {
    row: 27, says: 'A vigorous broadleaf stripped once risks its reserves',
    sources: ['ohio-agriculture-defoliation'], published: 'Ohio Department of Agriculture: a loss past 50 to 60 % forces a second set of leaves',
    overridden: 'Full leaf removal is an old means of the trade for strong, refined trees of tolerant kinds once leaves have hardened: allowed there, risky where any of that is missing.',
    asks: [
      { tree: strong('acer-buergerianum', 'refined'), operation: strip, date: '2026-06-15', where: munich, accept: ['allowed'] },
      { tree: strong('carpinus-betulus', 'refined'), operation: strip, date: '2026-06-15', where: munich, accept: ['risky'], because: ['defoliate/part-only'] },
      { tree: { ...strong('acer-buergerianum', 'refined'), vigour: 'steady' }, operation: strip, date: '2026-06-15', where: munich, accept: ['risky'], because: ['defoliate/not-strong'] },
    ],
  },
  {
    row: 27, says: 'Stripped in two years running, even a vigorous broadleaf runs down',
    sources: ['wargo-1978'], published: 'Wargo 1978, J. Arboric. 4(8):169',
    asks: [{ tree: { ...strong('acer-buergerianum', 'refined'), log: [{ op: 'defoliate', shareRemoved: 1, date: '2025-06-15' }] }, operation: strip, date: '2026-06-15', where: munich, accept: ['advise-against'], because: ['defoliate/again'] }],
  },
  {
    row: 27, says: 'Year after year of it kills oaks, or costs them a third of their growth',
    sources: ['baker-1925'], published: 'Baker 1925, J. Econ. Ent. 18:345 (ten years of gypsy moth)',
    asks: [{ tree: { ...strong('quercus-robur', 'refined'), log: [{ op: 'defoliate', shareRemoved: 1, date: '2025-06-25' }] }, operation: strip, date: '2026-06-25', where: munich, accept: ['advise-against'], because: ['defoliate/again'] }],
  },
  {
    row: 28, says: 'While the canopy is rebuilt, branches have the least to live on, and a loss of leaves hurts most',
    sources: ['branch-reserves-2017'], published: 'Branch reserves at canopy rebuilding, Sci. Rep. 2017',
    asks: ['carpinus-betulus', 'acer-palmatum'].map((species) => ({ tree: strong(species, 'refined'), operation: strip, date: '2026-05-01', where: munich, accept: ['advise-against'] as const, because: ['defoliate/soft-leaves'] })),
  },
  {
    row: 28, says: 'Leaves just unfolded are not taken: the tree has spent its starch on them',
    restsOn: ['da-silva-2014'], sources: ['klein-2016'], published: 'Klein et al. 2016, Tree Physiol., tpw030 (hornbeam, beech, oak: over 95 % of branchlet starch used)',
    asks: ['carpinus-betulus', 'acer-buergerianum', 'quercus-robur'].map((species) => ({ tree: strong(species, 'refined'), operation: strip, date: '2026-05-01', where: munich, accept: ['advise-against'] as const, because: ['defoliate/soft-leaves'] })),
  },
  {
    row: 29, says: 'A red oak stripped in late summer makes fewer roots after repotting in spring',
    sources: ['larson-1975'], published: 'Larson 1975, Can. J. For. Res. 5:381',
    asks: [{ tree: strong('quercus-rubra', 'refined'), operation: { op: 'defoliate', shareRemoved: 0.3 }, date: '2026-09-05', where: albany, accept: ['risky'], because: ['defoliate/late-part'] }],
  },
];

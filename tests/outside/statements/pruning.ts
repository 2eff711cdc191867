import { expect } from 'vitest';
import { cambridge, type Statement } from './statement.js';

const smallCut = { op: 'remove-branch', branchDiameterMm: 8, foliageShare: 0.05 };
const mediumCut = { op: 'remove-branch', branchDiameterMm: 14, foliageShare: 0.05 };
const strong = (species: string) => ({ species, vigour: 'strong', trunk: { diameterMm: 60 } }) as const;
const wisconsin = { region: 'US-WI', place: 'beaver-dam-wi' };
const michigan = { region: 'US-MI', place: 'grand-haven-fire-dept-mi' };
const chicago = { region: 'US-IL', place: 'chicago-ohare-il' };
const california = { region: 'US-CA', place: 'sacramento-executive-airport-ca' };
const britain = { region: 'GB', ...cambridge };
const oldBeech = { species: 'fagus-sylvatica', vigour: 'steady', growing: 'ground', stage: 'refined', ageYears: 60 } as const;
const thin = (shareRemoved: number) => ({ op: 'thin-shoots', shareRemoved, left: 2 });
const maple = strong('acer-palmatum');
const lowBranch = { op: 'remove-branch', branchDiameterMm: 15, foliageShare: 0.3 };
const trident = (diameterMm: number) => ({ species: 'acer-buergerianum', vigour: 'strong', growing: 'ground', stage: 'developing', trunk: { diameterMm }, aim: { trunkDiameterMm: 90 } }) as const;
const tokyo = { place: 'tokyo-japan' };

export const pruning: readonly Statement[] = [
  {
    row: 9, says: 'Half of an old tree\'s foliage in one season is too much; a fifth is not',
    sources: ['csu-7-825'], published: 'Whiting et al., Colorado State University 7.825 (20 % mature, 25 % medium)', restsOn: ['ansi-a300-1995'],
    /* How far past the limit turns risky into wrong depends on how the species buds back (practice), so both are accepted. */
    asks: [
      { tree: oldBeech, operation: thin(0.5), date: '2026-07-15', where: cambridge, accept: ['risky', 'advise-against'], because: ['foliage/too-much'] },
      { tree: oldBeech, operation: thin(0.2), date: '2026-07-15', where: cambridge, accept: ['allowed'], silent: ['foliage/too-much'] },
      { tree: { ...oldBeech, species: 'pinus-strobus' }, operation: thin(0.55), date: '2026-07-15', where: cambridge, accept: ['advise-against'], because: ['foliage/far-too-much'] },
    ],
  },
  {
    row: 10, says: 'A young, vigorous tree can spare up to a third of its foliage',
    sources: ['uf-structural-plan'], published: 'University of Florida IFAS, plan for young street trees (a quarter at planting, up to 40 % two years on); Colorado State says 33 %',
    asks: [{ tree: { species: 'acer-campestre', vigour: 'strong', growing: 'ground', stage: 'developing', ageYears: 6 }, operation: thin(0.3), date: '2026-07-15', where: cambridge, accept: ['allowed', 'risky'], silent: ['foliage/far-too-much'] }],
  },
  {
    row: 13, says: 'No oak is cut in May where oak wilt is about, in Wisconsin as in Illinois',
    sources: ['cleveland-2016'], published: 'Cleveland 2016, University of Illinois, Home, Yard & Garden: no cuts on oak and elm April to October',
    asks: [
      { tree: strong('quercus-rubra'), operation: smallCut, date: '2026-05-15', where: wisconsin, accept: ['advise-against'], because: ['disease/oak-wilt'] },
      { tree: strong('quercus-rubra'), operation: smallCut, date: '2026-02-15', where: michigan, accept: ['allowed'] },
    ],
  },
  {
    row: 14, says: 'An oak wounded in the season of oak wilt is painted at once',
    sources: ['wisconsin-dnr-oak-wilt'], published: 'Wisconsin DNR, in News8000 (beetles reach a cut in 15 to 30 minutes)',
    asks: [{ tree: strong('quercus-rubra'), operation: smallCut, date: '2026-05-15', where: wisconsin, accept: ['advise-against'], because: ['disease/oak-wilt'], also: (assessment) => expect(assessment.findings[0]?.because.text).toMatch(/painted at once/) }],
  },
  {
    row: 15, says: 'An ornamental cherry in Britain is cut in summer, not in January',
    sources: ['herald-allan'], published: 'D. Allan, Herald Scotland (silver leaf)', restsOn: ['amateur-gardening-2023'],
    asks: [
      { tree: strong('prunus-serrulata'), operation: { ...smallCut, branchDiameterMm: 10 }, date: '2026-01-15', where: britain, accept: ['advise-against'], because: ['disease/silver-leaf'] },
      { tree: strong('prunus-serrulata'), operation: { ...smallCut, branchDiameterMm: 10 }, date: '2026-07-15', where: britain, accept: ['allowed'], silent: ['disease/silver-leaf'] },
    ],
  },
  {
    row: 16, says: 'Apple kin are not cut in the weather of fire blight; in winter they may be',
    sources: ['uc-pest-note-7414'], published: 'University of California Pest Note 7414', restsOn: ['illinois-hortanswers'],
    /* Wet, warm days are not among the facts; open blossom stands for the time of infection, and so risky is accepted beside advise-against. */
    asks: [
      { tree: { ...strong('malus-floribunda'), flower: 'open' }, operation: smallCut, date: '2026-05-01', where: chicago, accept: ['risky', 'advise-against'], because: ['disease/fire-blight'], also: (assessment) => expect(assessment.cautions.map((caution) => caution.id)).toContain('disinfect') },
      { tree: strong('malus-floribunda'), operation: smallCut, date: '2026-02-10', where: chicago, accept: ['allowed'], silent: ['disease/fire-blight'] },
    ],
  },
  {
    row: 17, says: 'A pine in California is pruned from October to January, not in June',
    sources: ['ucanr-fresno-pines'], published: 'UC ANR, Fresno Gardening Green (bark beetles, pitch moth)',
    asks: [
      { tree: strong('pinus-ponderosa'), operation: mediumCut, date: '2026-06-15', where: california, accept: ['advise-against'], because: ['disease/bark-beetles-wide-cut'] },
      { tree: strong('pinus-ponderosa'), operation: mediumCut, date: '2026-11-15', where: california, accept: ['allowed'], silent: ['disease/bark-beetles'] },
    ],
  },
  {
    row: 18, says: 'A birch is not cut while borers fly, May to the start of August',
    sources: ['horticulture-magazine-birch'], published: 'Horticulture magazine (bronze birch borer, 1 May to 1 August)',
    asks: [
      { tree: strong('betula-pendula'), operation: mediumCut, date: '2026-06-15', where: chicago, accept: ['advise-against'], because: ['disease/borers-wide-cut'] },
      { tree: strong('betula-pendula'), operation: mediumCut, date: '2026-08-15', where: chicago, accept: ['allowed'], silent: ['disease/borers'] },
    ],
  },
  {
    row: 19, says: 'A maple cut in March bleeds, which only looks bad; full leaf avoids it',
    sources: ['cleveland-2016'], published: 'Cleveland 2016, University of Illinois, Home, Yard & Garden', restsOn: ['rhs-bleeding'],
    asks: [
      { tree: maple, operation: { ...smallCut, branchDiameterMm: 9 }, date: '2026-03-10', where: cambridge, accept: ['allowed', 'risky'], because: ['cut/bleeds'], also: (assessment) => expect(assessment.findings.map((finding) => finding.costs)).toEqual(['looks']) },
      { tree: maple, operation: { ...smallCut, branchDiameterMm: 9 }, date: '2026-07-10', where: cambridge, accept: ['allowed'], silent: ['cut/bleeds'] },
    ],
  },
  {
    row: 19, says: 'So does midwinter',
    sources: ['rhs-bleeding'], published: 'RHS, Bleeding from pruning cuts (Japanese maple November to January)',
    asks: [{ tree: maple, operation: { ...smallCut, branchDiameterMm: 9 }, date: '2026-12-10', where: cambridge, accept: ['allowed'], silent: ['cut/bleeds'] }],
  },
  {
    row: 40, says: 'Low branches are kept while the base is to thicken; taken early, they slow it',
    sources: ['uf-low-branches'], published: 'University of Florida IFAS, hort.ifas.ufl.edu/woody', restsOn: ['harris-1980'],
    asks: [
      { tree: trident(40), operation: lowBranch, date: '2026-07-05', where: tokyo, accept: ['risky'], because: ['foliage/still-thickening'] },
      { tree: trident(88), operation: { ...lowBranch, foliageShare: 0.2 }, date: '2026-07-05', where: tokyo, accept: ['allowed'], silent: ['foliage/still-thickening'] },
    ],
  },
];

import { expect } from 'vitest';
import { albany, cambridge, type Statement } from './statement.js';

const tree = (species: string, vigour: 'steady' | 'strong' = 'steady') => ({ species, vigour, stage: 'developing' }) as const;
const repot = (rootsRemoved: number) => ({ op: 'repot', rootsRemoved, soilRemoved: 'some' });
const iowa = { place: 'perry-ia' };
const lift = { op: 'collect', rootsRemoved: 0.2, soilRemoved: 'some' };
const potted = (species: string) => ({ ...tree(species), growing: 'bonsai-pot' }) as const;
const winter = { date: '2026-12-10', where: cambridge };
const warmRoom = { op: 'overwinter', placement: 'heated-room' };
const wired = { ...potted('fagus-sylvatica'), log: [{ op: 'wire', bend: 'gentle', date: '2025-06-01' }] };

export const roots: readonly Statement[] = [
  {
    row: 30, says: 'A deciduous tree is not repotted while its shoots lengthen in spring',
    sources: ['watson-himelick-1982', 'krueger-trappe-1967'], published: 'Watson & Himelick 1982, J. Arboric. 8(12):305 (Norway maple, green ash, ginkgo); Krueger & Trappe 1967',
    asks: ['acer-platanoides', 'fraxinus', 'ginkgo-biloba'].map((species) => ({ tree: tree(species, 'strong'), operation: repot(0.3), date: '2026-05-20', where: albany, accept: ['advise-against'] as const, because: ['roots/leaves-need-them'], traits: ['roots.phases'] })),
  },
  {
    row: 30, says: 'Late spring, with tender new growth, is the worst time to move a tree',
    sources: ['washington-post-1979'], published: 'Gouin, Washington Post, 22 June 1979',
    asks: ['acer-platanoides', 'fraxinus', 'quercus-robur'].map((species) => ({ tree: tree(species, 'strong'), operation: repot(0.3), date: '2026-05-20', where: albany, accept: ['advise-against'] as const, because: ['roots/leaves-need-them'], traits: ['roots.phases'] })),
  },
  {
    row: 31, says: 'Oak and ash move well in early spring',
    sources: ['harris-bassuk-1994'], published: 'Harris & Bassuk 1994, J. Arboric. 20(6):310 (scarlet oak, green ash)',
    asks: ['quercus-rubra', 'quercus-palustris', 'fraxinus'].map((species) => ({ tree: tree(species), operation: repot(0.2), date: '2026-04-10', where: albany, accept: ['allowed'] as const, silent: ['roots/out-of-window', 'roots/leaves-need-them'], traits: ['roots.phases'] })),
  },
  {
    row: 31, says: 'Early spring, as the buds begin to move, is the time to repot',
    sources: ['rhs-containers'], published: 'RHS, trees and shrubs in containers (advice 350)',
    asks: [{ tree: tree('acer-campestre'), operation: repot(0.2), date: '2026-03-15', where: cambridge, accept: ['allowed'], silent: ['roots/out-of-window', 'roots/leaves-need-them'], traits: ['roots.phases'] }],
  },
  {
    row: 32, says: 'A third of roots and soil may be replaced every other year',
    sources: ['rhs-containers'], published: 'RHS, trees and shrubs in containers (advice 350)',
    asks: [{ tree: { ...tree('malus-sylvestris'), lastRepotted: '2024-03' }, operation: repot(0.333), date: '2026-03-15', where: cambridge, accept: ['allowed'], silent: ['roots/too-many', 'roots/again-too-soon', 'roots/sooner-than-needed'], traits: ['roots.maxRemoved'] }],
  },
  {
    row: 33, says: 'A hornbeam in full leaf in midsummer does not have its roots cut',
    sources: ['washington-post-1979'], published: 'Gouin, Washington Post, 22 June 1979: in summer only with ample water',
    asks: [{ tree: tree('carpinus-betulus'), operation: repot(0.3), date: '2026-07-05', where: cambridge, accept: ['risky', 'advise-against'], because: ['roots/leaves-need-them'], traits: ['roots.phases'] }],
  },
  {
    row: 33, says: 'An apple whose roots were cut is itself again some four weeks on, and is not cut in midsummer',
    sources: ['ferree-1989'], published: 'Ferree 1989, HortScience 24:62 (shoots checked three weeks, level in the fourth)',
    asks: [
      { tree: tree('malus-sylvestris'), operation: repot(0.3), date: '2026-07-05', where: cambridge, accept: ['advise-against'], because: ['roots/leaves-need-them'], traits: ['roots.phases'] },
      { tree: tree('malus-sylvestris'), operation: repot(0.2), date: '2026-03-15', where: cambridge, accept: ['allowed'], silent: ['roots/leaves-need-them'], traits: ['roots.phases'],
        also: (assessment) => { const [least, most] = assessment.expect.recoveryWeeks as [number, number]; expect(least).toBeLessThanOrEqual(4); expect(most).toBeGreaterThanOrEqual(4); expect(most).toBeLessThanOrEqual(8); } },
    ],
  },
  {
    row: 34, says: 'An evergreen is moved in early spring or late August, not in November',
    sources: ['isu-evergreens'], published: 'Iowa State University Extension, moving evergreens (full)',
    asks: [
      { tree: tree('picea-abies'), operation: lift, date: '2026-11-10', where: iowa, accept: ['advise-against'], because: ['roots/no-time-to-regrow'] },
      { tree: tree('picea-abies'), operation: lift, date: '2026-04-15', where: iowa, accept: ['allowed'], silent: ['roots/no-time-to-regrow'] },
      { tree: tree('picea-abies'), operation: lift, date: '2026-08-28', where: iowa, accept: ['allowed'], silent: ['roots/no-time-to-regrow'] },
    ],
  },
  {
    row: 34, says: 'A pine is moved in spring, not in November',
    sources: ['umn-spring-move'], published: 'University of Minnesota Extension 2008, trees best moved in spring (conifers, many hardwoods)',
    asks: ['pinus-strobus', 'pinus-sylvestris'].flatMap((species) => [
      { tree: tree(species), operation: lift, date: '2026-11-10', where: iowa, accept: ['advise-against'] as const, because: ['roots/no-time-to-regrow'], traits: ['roots.phases'] },
      { tree: tree(species), operation: lift, date: '2026-04-15', where: iowa, accept: ['allowed'] as const, silent: ['roots/no-time-to-regrow'], traits: ['roots.phases'] },
    ]),
  },
  {
    row: 35, says: 'The top is not cut hard to balance cut roots',
    sources: ['shoup-1981'], published: 'Shoup, Reavis & Whitcomb 1981, J. Arboric. 7(6):155 (11 species, 528 trees, no gain)',
    /* A review; whether the trial is among what it reviews was not seen. */
    restsOn: ['chalker-scott'],
    asks: [
      { tree: { ...tree('acer-campestre'), log: [{ op: 'repot', rootsRemoved: 0.3, date: '2026-03-15' }] }, operation: { op: 'trim', shareRemoved: 0.4 }, date: '2026-04-20', where: cambridge, accept: ['risky', 'advise-against'], because: ['foliage/roots-just-cut'] },
      { tree: tree('acer-campestre'), operation: repot(0.35), date: '2026-03-15', where: cambridge, accept: ['allowed'] },
    ],
  },
  {
    row: 36, says: 'A pot outdoors at -12 C kills roots of a tree whose top bears -20 C; in the ground or a cool store it lives',
    sources: ['dum-pot-zones', 'bhg-pot-zones'], published: 'Two garden pages: plan two hardiness zones (11 C) hardier in a pot',
    asks: ['ilex-crenata', 'zelkova-serrata', 'acer-palmatum'].flatMap((species) => [
      { tree: potted(species), operation: { op: 'overwinter', placement: 'outdoors-exposed', lowestC: -12 }, ...winter, accept: ['risky', 'advise-against'] as const, because: ['cold/kills-roots'], traits: ['roots.killC'] },
      { tree: { ...tree(species), growing: 'ground' as const }, operation: { op: 'overwinter', placement: 'outdoors-exposed', lowestC: -12 }, ...winter, accept: ['allowed'] as const },
      { tree: potted(species), operation: { op: 'overwinter', placement: 'cool-room', lowestC: -3, highestC: 7 }, ...winter, accept: ['allowed'] as const },
    ]),
  },
  {
    row: 37, says: 'A pot in its winter store must not dry out',
    sources: ['rutgers-fs528'], published: 'J. Johnson 2015, Rutgers FS528: moisture is the main protection of roots',
    asks: [{ tree: potted('zelkova-serrata'), operation: { op: 'overwinter', placement: 'cool-room', lowestC: 0, highestC: 6 }, ...winter, accept: ['allowed'], follows: ['check-moisture'], also: (assessment) => expect(assessment.after.map((after) => after.do.id)).toContain('after.check-moisture') }],
  },
  {
    row: 38, says: 'Larch, pine, fir and hemlock are not kept in a heated room all winter; a strawberry tree bears it better',
    sources: ['harrington-gould-2015'], published: 'Harrington & Gould 2015, Front. Plant Sci. 6:120 (obligate chilling; madrone facultative)',
    asks: [
      ...['larix-decidua', 'pinus-sylvestris', 'abies-lasiocarpa', 'tsuga-canadensis'].map((species) => ({ tree: potted(species), operation: warmRoom, ...winter, accept: ['advise-against'] as const, because: ['warm/no-winter'], traits: ['rest.need'] })),
      { tree: potted('arbutus-unedo'), operation: warmRoom, ...winter, accept: ['allowed', 'risky'], silent: ['warm/no-winter'], traits: ['rest.need'] },
      { tree: potted('larix-decidua'), operation: { op: 'overwinter', placement: 'cold-frame' }, ...winter, accept: ['allowed'], silent: ['warm/no-winter'] },
    ],
  },
  {
    row: 38, says: 'A lodgepole pine, which wants much cold, least of all',
    sources: ['harrington-gould-2015'], published: 'Harrington & Gould 2015, Front. Plant Sci. 6:120 (pines: obligate chilling)', restsOn: ['man-2017'],
    asks: [{ tree: potted('pinus-contorta'), operation: warmRoom, ...winter, accept: ['advise-against'], because: ['warm/no-winter'], traits: ['rest.need'] }],
  },
  {
    row: 39, says: 'Whoever wires is told to look at the wire, and to take it off, well within a year',
    sources: ['ophardt-ties'], published: 'M. Ophardt, Washington State University, reported by a garden page: ties off within a year',
    asks: ['fagus-sylvatica', 'pinus-sylvestris', 'acer-buergerianum'].map((species) => ({
      tree: potted(species), operation: { op: 'wire', bend: 'gentle' }, date: '2026-07-10', where: cambridge, accept: ['allowed', 'risky'] as const, follows: ['check-the-wire'],
      also: (assessment) => { const look = assessment.after.find((after) => after.do.id === 'after.check-the-wire'); expect(look?.from).toMatch(/^2026/); expect(look?.to?.localeCompare('2027-07-10')).toBe(-1); },
    })),
  },
  {
    row: 39, says: 'Wire that has been on for over a year comes off before anything else is bent',
    sources: ['ophardt-ties'], published: 'M. Ophardt, Washington State University, reported by a garden page: girdling, a weak point, a swelling above',
    asks: [
      { tree: wired, operation: { op: 'wire', bend: 'gentle' }, date: '2026-07-10', where: cambridge, accept: ['risky', 'advise-against'], because: ['wire/old-wire-on'] },
      { tree: wired, operation: { op: 'unwire', how: 'cut' }, date: '2026-07-10', where: cambridge, accept: ['allowed'] },
    ],
  },
];

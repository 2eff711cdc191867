import { describe, expect, it } from 'vitest';
import { advisor, shipped } from '../shipped.js';

const closureOf = async (species: string, branchDiameterMm: number): Promise<readonly [number, number]> => {
  const { expect: expected } = await advisor.assess({
    tree: { species, growing: 'ground', stage: 'developing', vigour: 'steady', trunk: { diameterMm: 120 } },
    operation: { op: 'remove-branch', branchDiameterMm, finish: 'collar', foliageShare: 0.05 }, date: '2026-04-20', where: { place: 'munich-airport-germany' },
  });
  return expected.closureYears as [number, number];
};

// Against: Nicolescu, Sandi & Paun 2013, Scand. J. For. Res. 28:340. Northern red oak in the ground, 184 cuts of 6 to 45 mm made in April and May:
// 80 % closed within three seasons, 88 % within five; sooner up to 30 mm. Our red oak cites the trial; the English oak, of the same pace, does not.
describe('cuts on an oak in the ground', () => {
  it('rest on no trait that cites the measurement', () => expect(shipped.species['quercus-robur']!.traits['healing.ingrowthMm']!.sources).not.toContain('nicolescu-2013'));

  it.each([6, 15, 25])('of %d mm usually close within three seasons', async (width) => {
    const [least, most] = await closureOf('quercus-robur', width);
    expect((least + most) / 2).toBeLessThanOrEqual(3);
  });

  it('of 45 mm, the widest of the trial, are the ones that may take more than three seasons', async () => {
    const [least, most] = await closureOf('quercus-robur', 45);
    expect(least).toBeLessThanOrEqual(3);
    expect(most).toBeGreaterThan(3);
    expect((least + most) / 2).toBeLessThanOrEqual(6);
  });
});

// Against: J. Johnson 2015, Rutgers FS528: dormant woody plants want about six to eight weeks below 4.4 C. Only species whose figure cites another source,
// or practice, are compared.
describe('the cold that a winter rest takes', () => {
  const others = Object.values(shipped.species).filter((species) => species.rank === 'taxon' && species.traits['rest.need']!.is === 'obligate' && !species.traits['rest.coldWeeks']!.sources.includes('rutgers-fs528'));
  const weeks = others.map((species) => ({ id: species.id, weeks: species.traits['rest.coldWeeks']!.is as number }));

  it('is four to ten weeks in the few species that must rest and cite others', () => {
    expect(weeks.length).toBeGreaterThanOrEqual(6);
    const outside = weeks.filter((one) => one.weeks < 4 || one.weeks > 10).map((one) => one.id);
    /* White spruce: 300 to 500 hours are enough (Man, Lu & Dang 2017, Front. Plant Sci. 8:1354). */
    expect(outside.filter((id) => id !== 'picea-glauca')).toEqual([]);
  });

  it('is shorter for a red maple than for most, some 600 hours', () => {
    // Against: Wilson et al. 2002, J. Arboric. 28(3):148; 600 hours are 3.6 weeks. The trait cites it: carried over, not checked.
    expect((shipped.species['acer-rubrum']!.traits['rest.coldWeeks']!.is as number) * 7 * 24).toBeGreaterThan(550);
    expect((shipped.species['acer-rubrum']!.traits['rest.coldWeeks']!.is as number) * 7 * 24).toBeLessThan(750);
  });
});

import { afterAll, describe, expect, it } from 'vitest';
import { type Compared, holdTo, tallied } from './agreement.js';
import { cites, saidBy, traitRows } from './traitRows.js';

/* See traits.test.ts for what is compared and what is left out. */

const plants = traitRows('usda-plants.csv', 'species');
const table = 'usda-plants-characteristics';
const yes = (flag: string | undefined): boolean => flag === 'yes';
/** Points of germination gained by cold. */
const gain = new Map(traitRows('sylvanseeds.csv', 'species').map(({ species, row }) => [species.id, Number(row['coldPct']) - Number(row['unstratifiedPct'])]));
afterAll(() => process.stdout.write(`${tallied()}\n`));

// Against: USDA NRCS, The PLANTS Database, characteristics: is it raised from cuttings of stem or root in practice?
describe('rooting of cuttings', () => {
  const ways = ['softwood', 'semiRipe', 'hardwood', 'root'].map((way) => `propagation.${way}`);
  /** Flag no against what is read or known beyond doubt. */
  const flagged = ['punica-granatum', 'ulmus-parvifolia'];
  const differing: Readonly<Record<string, string>> = {
    'acer-rubrum': 'flag no; softwood of red maple rooted well in a trial of 1995 (read)',
    'acer-tataricum-subsp-ginnala': 'flag no; softwood of Amur maple is rooted in nurseries (practice)',
    'celastrus-orbiculatus': 'flag no; roots readily from pieces of root, which is how it spreads (practice)',
  };
  const comparable = plants.filter(({ species }) => !ways.some((way) => cites(species, way, table)) && !flagged.includes(species.id));
  const said = comparable.map(({ species, row }) => ({ id: species.id, flag: yes(row['cuttings']), values: ways.flatMap((way) => saidBy(species, way)) }));
  /* Our scale has four steps, the flag two: `good` means yes, `none` of every kind means no, what lies between fits either. */
  const fits = (values: readonly unknown[], flag: boolean): boolean => (flag ? values.some((one) => one !== 'none') : !values.includes('good'));

  it('contradicts the same database in fewer than one species in ten', () => {
    holdTo('cuttings, USDA PLANTS', said.map(({ id, flag, values }) => ({ id, agrees: fits(values, flag), found: `${values.join(', ')}, table ${flag}` })), differing,
      `not compared: ${plants.length - comparable.length - flagged.length} that cite the table, ${flagged.length} flags that look wrong`);
  });

  it('goes with it more often than by chance, where our scale is clear', () => {
    const clear = said.map(({ flag, values }) => ({ flag, roots: values.includes('good') || values.includes('fair') }));
    const share = (flag: boolean): number => { const of = clear.filter((one) => one.flag === flag); return of.filter((one) => one.roots).length / of.length; };
    expect(share(true) - share(false)).toBeGreaterThan(0.2);
  });
});

// Against: the same table, and SylvanSeeds (Fernández-Pascual 2021, J. Vegetation Science 32:e12960): does cold raise germination?
describe('cold for seed', () => {
  const differing: Readonly<Record<string, string>> = {
    'chaenomeles-japonica': 'flag no; quince kin is sown after a cold winter or its like (from memory)',
    'cydonia-oblonga': 'flag no; quince seed lies over without cold (from memory)',
    'ginkgo-biloba': 'flag no; a short cold evens it (Woody Plant Seed Manual, recalled)',
    'hedera-helix': 'flag no; ivy is sown in autumn or after cold (from memory)',
  };
  /** Two published tables that say the opposite settle nothing: a gain of 30 points or more against a no, none of 10 against a yes. */
  const torn = (id: string, flag: boolean): boolean => { const points = gain.get(id); return points !== undefined && (flag ? points < 10 : points >= 30); };
  const trait = 'propagation.coldWeeks';

  it('is wanted where the database says that it helps, in nine species of ten', () => {
    const free = plants.filter(({ species }) => !cites(species, trait, table));
    const compared = free.filter(({ species, row }) => !torn(species.id, yes(row['coldStratification']))).map(({ species, row }): Compared => {
      const weeks = saidBy(species, trait) as readonly number[];
      /* A few weeks help most seeds a little; they fit either flag. */
      return { id: species.id, agrees: weeks.some((one) => (yes(row['coldStratification']) ? one > 0 : one < 4)), found: `${weeks.join(' or ')} weeks, table ${row['coldStratification']}` };
    });
    holdTo('cold for seed, USDA PLANTS', compared, differing, `not compared: ${plants.length - free.length} that cite the table, ${free.length - compared.length} on which two tables disagree`);
  });
});

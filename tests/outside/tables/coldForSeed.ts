import type { Table } from './table.js';
import { cites, rowId, saidBy, traitRows } from './traitRows.js';

const trait = 'propagation.coldWeeks';
const weeksOf = (said: readonly unknown[]): readonly number[] => said as readonly number[];

export const coldForSeed: Table = {
  name: 'cold for seed', traits: trait, published: 'USDA NRCS, The PLANTS Database, characteristics: cold stratification raises germination markedly',
  checks: () => traitRows('usda-plants.csv', 'species').map((one) => {
    const { species, row } = one;
    const weeks = weeksOf(saidBy(species, trait));
    /* A few weeks help most seeds a little; they fit either flag. */
    return { id: rowId(one), own: cites(species, trait, 'usda-plants-characteristics'), agrees: weeks.some((count) => (row['coldStratification'] === 'yes' ? count > 0 : count <= 4)), found: `${weeks.join(' or ')} weeks; table ${row['coldStratification']}` };
  }),
};

/** Points of germination gained by cold: 20 or more is help; seed of which 60 of 100 come without it can do without, though some weeks even it up. */
export const germination: Table = {
  name: 'cold for seed - germination', traits: trait, published: 'Fernández-Pascual 2021, SylvanSeeds, J. Vegetation Science 32:e12960, pooled tests',
  few: 'most of its species name it as their source',
  left: 'species whose pooled tests show neither',
  checks: () => traitRows('sylvanseeds.csv', 'species').flatMap((one) => {
    const { species, row } = one;
    const without = Number(row['unstratifiedPct']);
    const gain = Number(row['coldPct']) - without;
    if (gain < 20 && without < 60) return [];
    const weeks = weeksOf(saidBy(species, trait));
    return [{ id: rowId(one), own: cites(species, trait, 'sylvanseeds-2021'), agrees: weeks.some((count) => (gain >= 20 ? count > 0 : count <= 8)), found: `${weeks.join(' or ')} weeks; ${without} % without, ${row['coldPct']} % with cold` }];
  }),
};

/** Handbooks and merchants differ by half as a rule; within half and twice the time, or four weeks, is the same advice. */
export const coldTimes: Table = {
  name: 'cold for seed - weeks', traits: trait, published: 'Chong et al., Handbook of Plant and Crop Physiology; a tree-seed merchant (by row)',
  few: 'both are sources of the trait for nearly all that they name',
  checks: () => traitRows('cold-for-seed.csv', 'species').map((one) => {
    const { species, row } = one;
    const [from, to] = [Number(row['coldWeeksFrom']), Number(row['coldWeeksTo'])];
    const weeks = weeksOf(saidBy(species, trait));
    const near = (count: number): boolean => count >= Math.min(from / 2, from - 4) && count <= Math.max(to * 2, to + 4);
    return { id: rowId(one), own: cites(species, trait, row['source']!), agrees: weeks.some(near), found: `${weeks.join(' or ')} weeks; ${from} to ${to} (${row['source']})` };
  }),
};

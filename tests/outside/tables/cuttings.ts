import { records, withinAStep } from './records.js';
import { freeOf, type Table } from './table.js';
import { rowId, saidBy, traitRows } from './traitRows.js';

const ways = ['softwood', 'semiRipe', 'hardwood', 'root'].map((way) => `propagation.${way}`);

/** Our scale has four steps, the flag two: `good` means yes, `none` of every kind means no, what lies between fits either. */
const fits = (values: readonly unknown[], flag: boolean): boolean => (flag ? values.some((one) => one !== 'none') : !values.includes('good'));

export const cuttings: Table = {
  name: 'cuttings', traits: 'propagation.softwood, .semiRipe, .hardwood, .root', published: 'USDA NRCS, The PLANTS Database, characteristics: propagated by cuttings of stem or root',
  checks: () => traitRows('usda-plants.csv', 'species').map((row) => {
    const own = freeOf(row, 'usda-plants-characteristics', ways).length < ways.length;
    const values = ways.flatMap((way) => saidBy(row.species, way));
    return { id: rowId(row), own, agrees: fits(values, row.row['cuttings'] === 'yes'), found: `${values.join(', ')}; table ${row.row['cuttings']}` };
  }),
};

export const cuttingRecords: Table = {
  name: 'cuttings - single records', traits: cuttings.traits, published: 'trials and plant databases, by row',
  few: 'most records are named by the trait that they were read for',
  checks: () => records(ways, withinAStep),
};

import type { Table } from './table.js';
import { cites, rowId, saidBy, traitRows } from './traitRows.js';

/** Trials of one plant lie up to 5 C apart. A figure of ours that is warmer than theirs errs on the safe side, by up to two zones (11 C). */
export const rootFrost: Table = {
  name: 'root-killing cold', traits: 'roots.killC', published: 'Good & Steponkus 1977 and University of Massachusetts 1976, in Reid 1983; Mathers; Gouin 2006; Santamour 1979; Coleman et al. 1992; Mityga & Lanphear 1971 (by row)',
  few: 'few roots were ever frozen in a trial',
  checks: () => traitRows('root-frost.csv', 'taxon').map((one) => {
    const { species, row } = one;
    const said = saidBy(species, 'roots.killC') as readonly number[];
    const kill = Number(row['killC']);
    return { id: rowId(one, row['source']!), own: cites(species, 'roots.killC', row['source']!), agrees: said.some((c) => c >= kill - 5 && c <= kill + 11), found: `${said.join(' or ')} C; ${kill} C` };
  }),
};

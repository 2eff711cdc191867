import type { Table } from './table.js';
import { cites, rowId, saidBy, traitRows } from './traitRows.js';

const autumn = ['turning', 'leaf-fall'];

export const autumnMoves: Table = {
  name: 'moving in autumn', traits: 'roots.phases', published: 'three specimen growers\' lists of trees at risk when dug in autumn (by genus)',
  few: 'the lists are a source of the trait for most that they name',
  checks: () => traitRows('fall-digging.csv', 'taxon').map((one) => {
    const { species, row } = one;
    const said = saidBy(species, 'roots.phases').flat();
    return { id: rowId(one), own: cites(species, 'roots.phases', 'fall-dig-growers'), agrees: !said.some((phase) => autumn.includes(phase as string)), found: `${said.join(', ')}; on ${row['lists']} of 3 lists` };
  }),
};

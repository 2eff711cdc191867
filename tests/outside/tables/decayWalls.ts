import type { Table } from './table.js';
import { cites, rowId, saidBy, traitRows } from './traitRows.js';

export const decayWalls: Table = {
  name: 'walls against decay', traits: 'healing.rot', published: 'University of Florida IFAS, Ability to compartmentalize (after Lonsdale 1999, Dujesiefken 1991)',
  few: 'it is the source of the trait for nearly all that it names',
  checks: () => traitRows('compartmentalization.csv', 'taxon').map((one) => {
    const { species, row } = one;
    const said = saidBy(species, 'healing.rot');
    return { id: rowId(one), own: cites(species, 'healing.rot', 'uf-compartmentalization'), agrees: said.includes(row['walls'] === 'good' ? 'resists' : 'weak'), found: `${said.join(' or ')}; list ${row['walls']}` };
  }),
};

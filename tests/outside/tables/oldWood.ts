import type { Table } from './table.js';
import { cites, rowId, saidBy, traitRows } from './traitRows.js';

const rows = () => traitRows('conifer-lists.csv', 'genus');

export const oldWood: Table = {
  name: 'old wood of conifers', traits: 'budding.bareWood', published: 'American Conifer Society; R. Kujawski, Berkshire Eagle 2022; B. Cregg, Fine Gardening (by genus)',
  few: 'two of the three lists are sources of the trait; the third speaks of seven genera',
  checks: () => rows().filter(({ row }) => row['oldWood'] !== '').map((one) => {
    const { species, row } = one;
    const said = saidBy(species, 'budding.bareWood');
    const fits = row['oldWood'] === 'live' ? ['good', 'fair'] : ['none', 'poor'];
    return { id: rowId(one, row['list']!), own: cites(species, 'budding.bareWood', row['list']!), agrees: said.some((value) => fits.includes(value as string)), found: `${said.join(' or ')}; list ${row['oldWood']}` };
  }),
};

export const whorls: Table = {
  name: 'whorls of conifers', traits: 'form.whorls', published: 'Morton Arboretum, Pruning evergreens (by genus)',
  few: 'the list is the source of the trait',
  checks: () => rows().filter(({ row }) => row['branching'] !== '').map((one) => {
    const { species, row } = one;
    const said = saidBy(species, 'form.whorls');
    return { id: rowId(one), own: cites(species, 'form.whorls', row['list']!), agrees: said.includes(row['branching'] === 'whorled' ? 'marked' : 'none'), found: `${said.join(' or ')}; list ${row['branching']}` };
  }),
};

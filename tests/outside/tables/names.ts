import { findSpecies, plainName } from '../../../src/knowledge/findSpecies.js';
import { shipped } from '../../shipped.js';
import { readRows } from '../season/readRows.js';
import type { Table } from './table.js';
import { rowId, traitRows } from './traitRows.js';

const idOf = (name: string): string => { const found = findSpecies(shipped, name); return found.kind === 'found' ? found.species.id : found.kind; };

export const names: Table = {
  name: 'accepted names', traits: 'name', published: 'USDA NRCS, The PLANTS Database, accepted names',
  checks: () => traitRows('usda-names.csv', 'name').map((one) => ({ id: rowId(one), own: false, agrees: plainName(one.species.name) === plainName(one.listed), found: `${one.species.name}; table ${one.listed}` })),
};

export const synonyms: Table = {
  name: 'synonyms', traits: 'synonyms', published: 'GRIIS country checklists; weed risk assessments (by row)',
  few: 'the lists hold some thirty pairs',
  checks: () => readRows('synonyms.csv').map((row) => {
    const [ours, other] = [idOf(row['species']!), idOf(row['synonym']!)];
    return { id: row['synonym']!, own: false, agrees: ours === other, found: `${row['species']} is ${ours}; ${row['synonym']} is ${other}` };
  }),
};

import { records } from './records.js';
import type { Table } from './table.js';
import { cites, rowId, saidBy, traitRows } from './traitRows.js';

const trait = 'hazards.eaten';
const whom = { cat: 'pets', dog: 'pets', horse: 'livestock' } as const;

export const petToxicity: Table = {
  name: 'poisonous to animals', traits: trait, published: 'ASPCA, Toxic and non-toxic plants',
  few: 'it is the source of the trait for all that it names',
  checks: () => traitRows('aspca-toxic.csv', 'taxon').map((one) => {
    const { species, row } = one;
    const said = saidBy(species, trait).flat();
    const needed = [...new Set((row['toxicTo'] ?? '').split(';').map((animal) => whom[animal as keyof typeof whom]))];
    return { id: rowId(one), own: cites(species, trait, 'aspca-toxic'), agrees: needed.every((victim) => said.includes(victim)), found: `${said.join(', ')}; list ${row['toxicTo']}` };
  }),
};

/** Only rows that record a poison are compared: no record is no finding of safety. */
export const toxicity: Table = {
  name: 'poisonous - by degree', traits: trait, published: 'USDA NRCS, The PLANTS Database, characteristics: toxicity to people or livestock',
  few: 'few of its rows record a poison', left: 'rows that record none',
  checks: () => traitRows('usda-plants.csv', 'species').filter(({ row }) => ['slight', 'moderate', 'severe'].includes(row['toxicity']!)).map((one) => {
    const { species, row } = one;
    const said = saidBy(species, trait).flat();
    return { id: rowId(one), own: cites(species, trait, 'usda-plants-characteristics'), agrees: said.includes('people') || said.includes('livestock'), found: `${said.join(', ')}; table ${row['toxicity']}` };
  }),
};

export const toxicityRecords: Table = {
  name: 'poisonous - single records', traits: trait, published: 'HTA and RHS list; Warren County; Los Angeles Times 1990; weed risk assessments (by row)',
  few: 'the records are few', left: 'records that find no poison',
  checks: () => records([trait], (said, value) => value.split(';').every((victim) => said.flat().includes(victim.trim()))).filter((check) => !check.found.endsWith(' none')),
};

import { records } from './records.js';
import type { Table } from './table.js';
import { cites, rowId, saidBy, traitRows } from './traitRows.js';

const trait = 'climate.coldestC';
const coldest = (said: readonly unknown[]): readonly number[] => said as readonly number[];

/** The lowest temperature of a range is a record, usually 5 to 8 C colder than what gardens count on; two zones are 11 C. */
export const rangeCold: Table = {
  name: 'coldest - of the range', traits: trait, published: 'USDA NRCS, The PLANTS Database, characteristics: lowest temperature of the range',
  few: 'the rest of its species name it as their source',
  checks: () => traitRows('usda-plants.csv', 'species').map((one) => {
    const { species, row } = one;
    const said = coldest(saidBy(species, trait));
    return { id: rowId(one), own: cites(species, trait, 'usda-plants-characteristics'), agrees: said.some((c) => c - Number(row['lowestC']) >= -6 && c - Number(row['lowestC']) <= 17), found: `${said.join(' or ')} C; range ${row['lowestC']} C` };
  }),
};

/** Lists differ by a zone (5.6 C) among themselves, and a zone is as wide. */
export const zones: Table = {
  name: 'coldest - by zone', traits: trait, published: 'US National Arboretum, indicator plants; USDA zone map of 1990; Purdue Arboretum (by row)',
  few: 'the lists name some thirty of our species',
  checks: () => traitRows('zone-indicators.csv', 'species').map((one) => {
    const { species, row } = one;
    const said = coldest(saidBy(species, trait));
    const limit = Number(row['lowestC']);
    return { id: rowId(one, row['source']!), own: cites(species, trait, row['source']!), agrees: said.some((c) => c >= limit - 5.6 && c <= limit + 11.2), found: `${said.join(' or ')} C; zone ${row['zone']} from ${limit} C` };
  }),
};

/** LT50 is the frost that harms half of a hardened leaf or shoot; the figure that a grower plans by lies some degrees warmer, provenance adds as many. */
export const leafFrost: Table = {
  name: 'coldest - LT50', traits: trait, published: 'GlobTherm, Bennett et al. 2018, Scientific Data 5:180022',
  few: 'it holds eight of our species',
  checks: () => traitRows('leaf-frost.csv', 'species').map((one) => {
    const { species, row } = one;
    const said = coldest(saidBy(species, trait));
    return { id: rowId(one), own: cites(species, trait, 'globtherm-2018'), agrees: said.some((c) => Math.abs(c - Number(row['lt50C'])) <= 8), found: `${said.join(' or ')} C; LT50 ${row['lt50C']} C` };
  }),
};

export const coldRecords: Table = {
  name: 'coldest - single records', traits: trait, published: 'FAO EcoCrop; zone ratings of plant databases; frost trials (by row)',
  few: 'most of the records are the source of the trait',
  checks: () => records([trait], (said, value) => coldest(said).some((one) => Math.abs(one - Number(value)) <= 11)),
};

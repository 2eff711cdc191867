import { type Check, freeOf, type Table } from './table.js';
import { rowId, saidBy, traitRows } from './traitRows.js';

const source = 'usda-plants-characteristics';
const places = ['budding.stump', 'budding.base', 'budding.bareWood'] as const;

/** Whether a plant comes again once its whole top is gone. It does if a stump or a base sprouts; it does not where nothing of it does, bare wood included. */
const comesAgain = (values: readonly (readonly [string, readonly unknown[]])[]): boolean | undefined => {
  const among = (wanted: readonly unknown[], of: readonly string[]): boolean => values.some(([place, said]) => of.includes(place) && said.some((one) => wanted.includes(one)));
  if (among(['good', 'fair'], ['budding.stump', 'budding.base'])) return true;
  if (values.some(([place]) => place === 'budding.stump')) return false;
  return values.every(([, said]) => said.every((one) => one === 'none')) ? false : undefined;
};

export const regrowth: Table = {
  name: 'regrowth', traits: 'budding.stump, budding.base', published: 'USDA NRCS, The PLANTS Database, characteristics: resprout ability',
  left: 'species of which only the stump is known, and that from the table, while base or bare wood bud poorly',
  checks: () => traitRows('usda-plants.csv', 'species').flatMap((row): readonly Check[] => {
    const free = freeOf(row, source, places);
    const tied = free.length < places.length;
    const comes = comesAgain(free.map((place) => [place, saidBy(row.species, place)] as const));
    if (comes === undefined) return [];
    return [{ id: rowId(row), own: free.length === 0, agrees: comes === (row.row['resprouts'] === 'yes'), found: `${free.map((place) => `${place} ${saidBy(row.species, place).join(' or ')}`).join(', ')}${tied ? ' (the rest rests on the table)' : ''}; table ${row.row['resprouts']}` }];
  }),
};

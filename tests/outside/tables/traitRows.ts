import type { Species, Trait } from '../../../src/knowledge/knowledge.js';
import { shipped } from '../../shipped.js';
import { readRows } from '../season/readRows.js';

export interface TraitRow { readonly listed: string; readonly species: Species; readonly row: Readonly<Record<string, string>> }

const kinds = Object.values(shipped.species).filter((species) => species.rank === 'taxon' || species.rank === 'member');
const namesOf = (species: Species): readonly string[] => [species.name, ...species.synonyms].map((name) => name.toLowerCase().replace('×', ''));

/** The species that a published row speaks of: by name or synonym; where the row names only a genus, all that are filed there, or once were if none is. */
const spokenOf = (listed: string): readonly Species[] => {
  const name = listed.toLowerCase().replace('×', '');
  if (name.includes(' ')) return kinds.filter((species) => namesOf(species).includes(name));
  const filed = kinds.filter((species) => namesOf(species)[0]!.startsWith(`${name} `));
  return filed.length > 0 ? filed : kinds.filter((species) => namesOf(species).some((own) => own.startsWith(`${name} `)));
};

/** What tells the rows of one species apart: a word more where the table names it otherwise than we do. */
export const rowId = ({ species, listed }: TraitRow, ...more: readonly string[]): string => [species.id, ...(namesOf(species)[0] === listed.toLowerCase().replace('×', '') ? [] : [listed]), ...more].join(' ');

/** Rows of a published table, once for each of our species that they speak of; a row that no longer finds any is an error. */
export const traitRows = (file: string, key: string): readonly TraitRow[] => readRows(file).flatMap((row) => {
  const listed = row[key] ?? '';
  const found = spokenOf(listed);
  if (found.length === 0) throw new Error(`no species for ${listed} of ${file}`);
  return found.map((species) => ({ listed, species, row }));
});

/** What a trait says, once for each value where sources disagree. */
export const saidBy = (species: Species, trait: string): readonly Trait['is'][] => {
  const said = species.traits[trait];
  if (said === undefined) throw new Error(`${species.id} has no ${trait}`);
  return 'either' in said && said.either !== undefined ? (said.either as readonly Trait['is'][]) : [said.is];
};

export const cites = (species: Species, trait: string, source: string): boolean => species.traits[trait]!.sources.includes(source);

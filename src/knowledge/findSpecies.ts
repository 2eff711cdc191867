import { nearest } from './nearest.js';
import type { Knowledge, Species } from './knowledge.js';
import { nowCalled } from './nowCalled.js';

/** What a name means: one species, several that share it, or none with the names that are near. */
export type Found =
  | { readonly kind: 'found'; readonly species: Species; readonly by: 'id' | 'name' | 'synonym' | 'common-name' | 'renamed' }
  | { readonly kind: 'ambiguous'; readonly species: readonly Species[] }
  | { readonly kind: 'unknown'; readonly near: readonly string[]; readonly genus?: Species };

const marks = /[\u0300-\u036f]/g;

/** Most names: there is nothing to leave out of them. */
const plain = /^[a-z]+(?: [a-z]+)*$/;

/** A name as it is compared: no case, accents, hybrid signs or punctuation. */
export const plainName = (name: string): string => {
  const small = name.toLowerCase();
  if (plain.test(small)) return small;
  return name.normalize('NFKD').replace(marks, '').toLowerCase().replace(/[×✕]/g, ' ').replace(/[’'`".,()]/g, '').replace(/[-_\s]+/g, ' ').trim();
};

interface Index {
  readonly ids: ReadonlyMap<string, Species>;
  readonly names: ReadonlyMap<string, readonly Species[]>;
  readonly synonyms: ReadonlyMap<string, readonly Species[]>;
  readonly common: ReadonlyMap<string, readonly Species[]>;
}

const indexes = new WeakMap<Knowledge, Index>();

const indexOf = (knowledge: Knowledge): Index => {
  const kept = indexes.get(knowledge);
  if (kept !== undefined) return kept;
  const ids = new Map<string, Species>();
  const names = new Map<string, Species[]>();
  const synonyms = new Map<string, Species[]>();
  const common = new Map<string, Species[]>();
  const add = (to: Map<string, Species[]>, name: string, species: Species): void => {
    const key = plainName(name);
    const there = to.get(key);
    if (there === undefined) to.set(key, [species]);
    else if (!there.includes(species)) there.push(species);
  };
  for (const species of Object.values(knowledge.species)) {
    ids.set(plainName(species.id), species);
    add(names, species.name, species);
    for (const synonym of species.synonyms) add(synonyms, synonym, species);
    for (const each of Object.values(species.commonNames)) for (const name of each) add(common, name, species);
  }
  const index = { ids, names, synonyms, common };
  indexes.set(knowledge, index);
  return index;
};

/**
 * The species that a name means: by id, accepted name, synonym or common name, whatever its case and accents.
 *
 * Use it to let a person type a name. A cultivar name in quotes after it is left aside.
 */
export const findSpecies = (knowledge: Knowledge, name: string): Found => {
  const index = indexOf(knowledge);
  const called = nowCalled(knowledge, name.trim());
  const asked = plainName(called.slice(0, 200).replace(/\s+['‘"][^'’"]+['’"]\s*$/, ''));
  const byId = index.ids.get(asked);
  if (byId !== undefined) return { kind: 'found', species: byId, by: called === name.trim() ? 'id' : 'renamed' };
  for (const [by, from] of [['name', index.names], ['synonym', index.synonyms], ['common-name', index.common]] as const) {
    const found = from.get(asked);
    if (found === undefined) continue;
    const own = found.filter((species) => species.rank === 'taxon' || species.rank === 'member');
    const best = own.length > 0 ? own : found;
    if (best.length === 1) return { kind: 'found', species: best[0]!, by };
    const exact = best.filter((species) => species.parent === undefined || !best.some((other) => other.id === species.parent));
    return exact.length === 1 ? { kind: 'found', species: exact[0]!, by } : { kind: 'ambiguous', species: [...best].sort((a, b) => (a.id < b.id ? -1 : 1)) };
  }
  const accepted = [...new Set([...index.names.keys(), ...index.common.keys(), ...index.synonyms.keys()])];
  const genus = index.names.get(asked.split(' ')[0] ?? '')?.find((species) => species.rank === 'genus');
  return { kind: 'unknown', near: nearest(asked, accepted), ...(genus === undefined ? {} : { genus }) };
};

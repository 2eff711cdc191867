import type { Knowledge, Species } from '../knowledge.js';
import type { Parts, WrittenSpecies } from '../parts.js';

type Members = Readonly<Record<string, unknown>>;

const names = ({ name, author, commonNames, synonyms }: Species): Members => ({ name, ...(author === undefined ? {} : { author }), commonNames, synonyms });

/** Flat knowledge as what it is made of: each trait at the level that it comes from. */
export const partsOf = (knowledge: Knowledge): Parts => {
  const { schema: _, hash: __, species, rules, ...rest } = knowledge;
  const all = Object.values(species);
  const written = (of: Species): Members => {
    const traits = Object.entries(of.traits).filter(([, { level }]) => level === of.id).map(([name, { level: ___, ...trait }]) => [name, trait]);
    const members = all.filter(({ rank, parent }) => rank === 'member' && parent === of.id).map((member) => [member.id, names(member)]);
    return { ...names(of), ...(of.parent === undefined ? {} : { parent: of.parent }), traits: Object.fromEntries(traits) as Members, members: Object.fromEntries(members) as Members };
  };
  return {
    ...rest,
    species: new Map(all.flatMap((of): [string, WrittenSpecies][] => (of.rank === 'member' ? [] : [[of.id, { rank: of.rank, written: written(of) }]]))),
    rules: new Map(Object.entries(rules).map(([id, { id: ____, ...rule }]) => [id, rule])),
  };
};

import type { Knowledge } from 'sparebud';

/** Each name that a species is known by, with its botanical name where that is another: to choose from while typing. */
export const speciesNames = ({ species }: Knowledge): readonly { readonly name: string; readonly of: string }[] =>
  Object.values(species).filter(({ rank }) => rank !== 'group').flatMap(({ name, commonNames }) => [{ name, of: '' }, ...(commonNames['en'] ?? []).map((each) => ({ name: each, of: name }))]).sort((a, b) => (a.name.toLowerCase() < b.name.toLowerCase() ? -1 : 1));

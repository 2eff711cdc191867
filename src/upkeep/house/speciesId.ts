/** The id of a species by its accepted name: `Acer × freemanii` is acer-x-freemanii. */
export const speciesId = (name: string): string =>
  name.replace(/×/g, ' x ').normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase().replace(/[^a-z0-9]+/g, '-').replace(/^-|-$/g, '');

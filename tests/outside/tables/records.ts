import type { Check } from './table.js';
import { cites, rowId, saidBy, traitRows } from './traitRows.js';

/** Single published records of some traits, each held against the trait by its own source. */
export const records = (traits: readonly string[], agrees: (said: readonly unknown[], value: string) => boolean): readonly Check[] =>
  traitRows('published-traits.csv', 'species').filter(({ row }) => traits.includes(row['trait']!)).map((one) => {
    const { species, row } = one;
    const trait = row['trait']!;
    const said = saidBy(species, trait);
    return { id: rowId(one, trait, row['source']!), own: cites(species, trait, row['source']!), agrees: agrees(said, row['value']!), found: `${said.join(' or ')}; record ${row['value']}` };
  });

const steps: readonly unknown[] = ['none', 'poor', 'fair', 'good'];

/** Within one step of the four that we and the records use; a record may itself stand between two. */
export const withinAStep = (said: readonly unknown[], value: string): boolean => said.some((one) => Math.abs(steps.indexOf(one) - steps.indexOf(value)) <= 1);

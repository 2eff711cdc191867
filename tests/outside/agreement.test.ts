import { fileURLToPath } from 'node:url';
import { afterAll, describe, expect, it } from 'vitest';
import { root, shipped } from '../shipped.js';
import { agreementOf, agreementPage, figures, kept, share, tables } from './agreement.js';
import { saidBy, traitRows } from './tables/traitRows.js';

/*
 * Species traits against published tables, over the whole catalogue (tests/outside/data/README.md names them and their terms).
 * A row that the trait itself names as its source is no check and is counted apart.
 */

const all = tables.map(agreementOf);

describe('what the catalogue says of its species', () => {
  it.each(all.map((one) => [one.table.name, one] as const))('agrees with 95 of 100 rows of the table: %s', (name, one) => {
    const listed = kept.filter((entry) => entry.table === name).map((entry) => entry.id);
    expect(one.differing.map((check) => check.id).sort(), one.differing.map((check) => `${check.id}: ${check.found}`).join('\n')).toEqual([...listed].sort());
    expect(share(one)).toBeGreaterThanOrEqual(0.95);
  });

  it.each(all.map((one) => [one.table.name, one] as const))('is held against 60 rows that stand apart, or the table says why not: %s', (_, one) => {
    expect(one.apart.length + one.wrongRows >= 60, `${one.apart.length} rows`).toBe(one.table.few === undefined);
  });

  it('keeps a disagreement only with a reason and a better source', () => {
    for (const entry of kept) {
      expect(tables.map((table) => table.name)).toContain(entry.table);
      expect(entry.reason.length, entry.id).toBeGreaterThan(15);
      for (const id of entry.better) expect(shipped.sources[id], `${entry.id}: ${id}`).toBeDefined();
    }
    expect(new Set(kept.map((entry) => `${entry.table} ${entry.id}`)).size).toBe(kept.length);
  });

  it('leaves few rows out as wrong', () => {
    const rows = all.reduce((sum, one) => sum + one.apart.length + one.wrongRows, 0);
    expect(all.reduce((sum, one) => sum + one.wrongRows, 0) / rows).toBeLessThan(0.1);
  });

  it('is told on a page that is up to date', async () => await expect(agreementPage(all)).toMatchFileSnapshot(fileURLToPath(new URL(`file://${root}docs/agreement.md`))));
});

// Agreement on what is common to nearly all rows proves little; these would fail for a trait filled in blindly.
describe('traits that a table divides', () => {
  const plants = traitRows('usda-plants.csv', 'species');
  const among = (column: string, flag: string, holds: (row: (typeof plants)[number]) => boolean): number => { const of = plants.filter(({ row }) => row[column] === flag); return of.filter(holds).length / of.length; };
  const roots = ({ species }: (typeof plants)[number]): boolean => ['softwood', 'semiRipe', 'hardwood', 'root'].flatMap((way) => saidBy(species, `propagation.${way}`)).some((one) => one === 'good' || one === 'fair');
  const chills = ({ species }: (typeof plants)[number]): boolean => (saidBy(species, 'propagation.coldWeeks') as readonly number[]).some((one) => one >= 4);

  it('root from cuttings more often where the database says so', () => expect(among('cuttings', 'yes', roots) - among('cuttings', 'no', roots)).toBeGreaterThan(0.2));

  it('want a cold winter for their seed more often where the database says so', () => expect(among('coldStratification', 'yes', chills) - among('coldStratification', 'no', chills)).toBeGreaterThan(0.2));

  it('come again from the stump more often where the database says so', () => {
    const comes = ({ species }: (typeof plants)[number]): boolean => [...saidBy(species, 'budding.stump'), ...saidBy(species, 'budding.base')].some((one) => one === 'good' || one === 'fair');
    expect(among('resprouts', 'yes', comes) - among('resprouts', 'no', comes)).toBeGreaterThan(0.4);
  });
});

afterAll(() => process.stdout.write(`agreement with published tables\n${figures(all)}\n`));

import { shipped } from '../shipped.js';
import { readRows } from './season/readRows.js';
import { autumnMoves } from './tables/autumnMoves.js';
import { budRecords } from './tables/budRecords.js';
import { coldForSeed, coldTimes, germination } from './tables/coldForSeed.js';
import { cuttingRecords, cuttings } from './tables/cuttings.js';
import { decayWalls } from './tables/decayWalls.js';
import { coldRecords, leafFrost, rangeCold, zones } from './tables/hardiness.js';
import { names, synonyms } from './tables/names.js';
import { oldWood, whorls } from './tables/oldWood.js';
import { regrowth } from './tables/regrowth.js';
import { rootFrost } from './tables/rootFrost.js';
import type { Check, Table } from './tables/table.js';
import { petToxicity, toxicity, toxicityRecords } from './tables/toxicity.js';

export const tables: readonly Table[] = [regrowth, budRecords, oldWood, whorls, cuttings, cuttingRecords, coldForSeed, germination, coldTimes, rangeCold, zones, leafFrost, coldRecords, rootFrost, decayWalls, petToxicity, toxicity, toxicityRecords, autumnMoves, names, synonyms];

/** A disagreement that is kept. `row`: the row looks wrong or is a group figure that does not speak of this plant; `open`: it may be we who are wrong. */
export interface Kept { readonly table: string; readonly id: string; readonly kind: 'row' | 'open'; readonly reason: string; readonly better: readonly string[] }

export const kept: readonly Kept[] = readRows('disagreements.csv').map((row) => ({ table: row['table']!, id: row['id']!, kind: row['kind'] as Kept['kind'], reason: row['reason']!, better: row['better']!.split(';') }));

export interface Agreement {
  readonly table: Table;
  /** Rows that the trait names as its source. */
  readonly own: readonly Check[];
  /** Rows that stand apart, without those that look wrong. */
  readonly apart: readonly Check[];
  readonly wrongRows: number;
  readonly differing: readonly Check[];
  readonly agreeing: number;
}

export const agreementOf = (table: Table): Agreement => {
  const checks = table.checks();
  const wrong = new Set(kept.filter((one) => one.table === table.name && one.kind === 'row').map((one) => one.id));
  const apart = checks.filter((one) => !one.own && !wrong.has(one.id));
  return { table, own: checks.filter((one) => one.own), apart, wrongRows: checks.filter((one) => !one.own && wrong.has(one.id)).length, differing: checks.filter((one) => !one.agrees), agreeing: apart.filter((one) => one.agrees).length };
};

export const share = (one: Agreement): number => (one.apart.length === 0 ? 1 : one.agreeing / one.apart.length);

const percent = (agreeing: number, of: number): string => (of === 0 ? '' : `${Math.round((1000 * agreeing) / of) / 10} %`);
const line = ({ table, own, apart, agreeing, wrongRows }: Agreement): string =>
  `| ${[table.name, own.length, apart.length, agreeing, percent(agreeing, apart.length), wrongRows, percent(agreeing, apart.length + wrongRows)].join(' | ')} |`;

/** The figures, a line a table. */
export const figures = (all: readonly Agreement[]): string => ['| table | its own rows | rows apart | agree | share | rows that look wrong | share with them |', '| --- | --- | --- | --- | --- | --- | --- |', ...all.map(line)].join('\n');

const about = (one: Agreement): string => [
  `* **${one.table.name}** (\`${one.table.traits.split(', ').join('`, `')}\`): ${one.table.published}.`,
  ...(one.table.few === undefined ? [] : [`  Fewer than 60 rows apart: ${one.table.few}.`]),
  ...(one.table.left === undefined ? [] : [`  Not compared: ${one.table.left}.`]),
].join('\n');

const reason = (one: Kept): string => `| ${one.table} | ${one.id} | ${one.kind === 'row' ? 'the row looks wrong' : 'open'} | ${one.reason} | ${one.better.map((id) => `\`${id}\``).join(', ')} |`;

/** The page docs/agreement.md. */
export const agreementPage = (all: readonly Agreement[]): string => `# How the catalogue agrees with published tables

This page is generated: \`npx vitest run --config .config/vitest.config.ts tests/outside/agreement.test.ts -u\` writes it, and a test fails while it lags behind.

Each row of a published table is held against what the catalogue says of the same species. A row whose table or record the trait itself names as its source was only carried over
(*its own rows*); the others stand *apart*, and of these at least 95 % must agree. Where a row looks wrong, because other sources that were read or what is seen on the plant
everywhere contradict it, or because a figure for a group does not speak of this plant, it is left out of the share and listed below with the better source; the last column counts it as a
disagreement. What is left open is listed too, and counts against us. An entry that is no longer needed fails the test.

${figures(all)}

## The tables

${all.map(about).join('\n')}

Terms of use of each table: [tests/outside/data](../tests/outside/data/README.md).

## Disagreements that are kept

| table | row | | why | better source |
| --- | --- | --- | --- | --- |
${kept.map(reason).join('\n')}

${Object.keys(shipped.species).length} species, genera and groups were held against the tables.
`;

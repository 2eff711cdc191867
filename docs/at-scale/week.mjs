/* Which trees are allowed what in a week, and on which days of it, a line each, from tables that `table.mjs` made: node week.mjs 'tables/*.parquet' 2027-03-20 */
import { DuckDBInstance } from '@duckdb/node-api';

const [tables, from] = process.argv.slice(2);
const connection = await (await DuckDBInstance.create()).connect();
const allowed = await connection.stream(
  `SELECT tree, operation, list(date ORDER BY date) AS days FROM read_parquet($tables)
   WHERE verdict = 'allowed' AND CAST(date AS DATE) BETWEEN CAST($from AS DATE) AND CAST($from AS DATE) + 6
   GROUP BY tree, operation ORDER BY tree, operation`,
  { tables, from },
);
for await (const rows of allowed.yieldRowObjectJson()) for (const row of rows) process.stdout.write(`${JSON.stringify(row)}\n`);

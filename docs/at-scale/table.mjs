/*
 * Makes a Parquet table of answers, one a line on standard input, as the workers or `sparebud ask --lines --fields verdict,range,settled,meta` write them: node table.mjs answers.parquet < answers.jsonl
 * What is asked of the table later goes with each proposal as its `meta` and comes back with the answer: here { tree, operation, date }.
 */
import { createInterface } from 'node:readline';
import { parquetWriteFile } from 'hyparquet-writer';

const columns = {
  id: { type: 'STRING', of: ({ id }) => (id === undefined || id === null ? null : String(id)) },
  tree: { type: 'STRING', of: ({ meta }) => meta?.tree ?? null },
  operation: { type: 'STRING', of: ({ meta }) => meta?.operation ?? null },
  date: { type: 'STRING', of: ({ meta }) => meta?.date ?? null },
  verdict: { type: 'STRING', of: ({ verdict }) => verdict ?? null },
  best: { type: 'STRING', of: ({ range }) => range?.[0] ?? null },
  worst: { type: 'STRING', of: ({ range }) => range?.[1] ?? null },
  settled: { type: 'BOOLEAN', of: ({ settled }) => settled ?? null },
  error: { type: 'STRING', of: ({ error }) => error?.code ?? null },
};

const columnData = Object.entries(columns).map(([name, { type }]) => ({ name, type, data: [], nullable: true }));
for await (const line of createInterface({ input: process.stdin })) {
  const row = JSON.parse(line);
  for (const { name, data } of columnData) data.push(columns[name].of(row));
}
parquetWriteFile({ filename: process.argv[2], columnData });

import { readFileSync } from 'node:fs';
import { gunzipSync } from 'node:zlib';

/** Rows of a CSV file of tests/outside/data as records of text; lines that begin with # are skipped. */
export const readRows = (name: string): readonly Readonly<Record<string, string>>[] => {
  const raw = readFileSync(new URL(`../data/${name}`, import.meta.url));
  const lines = (name.endsWith('.gz') ? gunzipSync(raw) : raw).toString('utf8').split('\n').filter((line) => line !== '' && !line.startsWith('#'));
  const [head = '', ...body] = lines;
  const keys = head.split(',');
  return body.map((line) => {
    const cells = line.split(',');
    return Object.fromEntries(keys.map((key, i) => [key, cells[i] ?? '']));
  });
};

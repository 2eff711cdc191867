import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import fc from 'fast-check';
import { afterAll, expect, test } from 'vitest';
import { SparebudError } from '../../src/knowledge/error.js';
import { readKnowledge, readParts } from '../../src/knowledge/read/readKnowledge.js';
import { readYaml } from '../../src/knowledge/read/readYaml.js';
import { vet } from '../../src/upkeep/vet.js';
import { tinyFiles, removeTinyFolders, tinyFolder } from '../knowledge/tinyFolder.js';
import { cases, patience } from './cases.js';

afterAll(removeTinyFolders);

/* Law 7: loading never throws anything but our coded errors, on any bytes. */

const paths = Object.keys(tinyFiles);
const folder = tinyFolder();

/** A file put in the place of another for one run. */
const loaded = async (path: string, bytes: Uint8Array | string): Promise<void> => {
  writeFileSync(join(folder, path), bytes);
  try {
    const { issues } = readParts(folder);
    for (const issue of issues) {
      expect(issue.file, issue.message).toBeTruthy();
      expect(issue.line, issue.message).toBeGreaterThan(0);
      expect(issue.col, issue.message).toBeGreaterThan(0);
    }
    try {
      readKnowledge(folder);
      expect(issues).toEqual([]);
    } catch (cause) {
      if (!(cause instanceof SparebudError)) throw cause;
      expect(issues.length).toBeGreaterThan(0);
    }
    await vet(folder);
  } finally {
    writeFileSync(join(folder, path), tinyFiles[path]!);
  }
};

test('any bytes in the place of any file load, or are faults with a file, a line and a column', async () => {
  await fc.assert(fc.asyncProperty(fc.constantFrom(...paths), fc.uint8Array({ maxLength: 60 }), loaded), { numRuns: cases(150) });
}, patience(300_000));

const yamlish = fc.array(fc.constantFrom('a', 'when', 'traits', ': ', ':', '- ', '\n', '\n  ', '{', '}', '[', ']', ',', '"', "'", '#', '&a ', '*a', '!!set ', '!!binary ', '? ', '|', '>', '---\n', '...\n', '%YAML 1.1\n', '\t', '~', 'null', '1e999', '.nan', '-.inf', '0x1f', 'yes', '2024-01-01', '<<: ', '__proto__: ', '\u0000', '\u2028', 'é'), { maxLength: 30 }).map((parts) => parts.join(''));

test('any text that looks like YAML loads, or is a fault', async () => {
  await fc.assert(fc.asyncProperty(fc.constantFrom(...paths), yamlish, loaded), { numRuns: cases(250) });
}, patience(300_000));

test('a file with one piece cut out, doubled or changed loads, or is a fault', async () => {
  const mutated = fc.constantFrom(...paths).chain((path) => {
    const text = tinyFiles[path]!;
    return fc.tuple(fc.nat(text.length), fc.nat(12), fc.constantFrom('', 'x', ': ', '\n', '[', '{}', '- ', '~', '3', '"', '__proto__', 'all'), fc.boolean())
      .map(([at, length, put, doubled]): [string, string] => [path, doubled ? text.slice(0, at + length) + text.slice(at) : text.slice(0, at) + put + text.slice(at + length)]);
  });
  await fc.assert(fc.asyncProperty(mutated, async ([path, text]) => await loaded(path, text)), { numRuns: cases(400) });
}, patience(300_000));

test('a file with one value changed to any JSON loads, or is a fault', async () => {
  const changed = fc.constantFrom(...paths).chain((path) => {
    const places: (readonly (string | number)[])[] = [];
    const walk = (value: unknown, at: readonly (string | number)[]): void => {
      places.push(at);
      if (typeof value === 'object' && value !== null) for (const [key, member] of Object.entries(value)) walk(member, [...at, key]);
    };
    const { data } = readYaml(path, tinyFiles[path]!);
    walk(data, []);
    const put = (value: unknown, [step, ...rest]: readonly (string | number)[], with_: unknown): unknown =>
      step === undefined ? with_ : Array.isArray(value) ? value.map((member, i) => (String(i) === step ? put(member, rest, with_) : member)) : { ...(value as object), [step]: put((value as Readonly<Record<string, unknown>>)[step], rest, with_) };
    return fc.tuple(fc.constantFrom(...places), fc.jsonValue({ maxDepth: 2 })).map(([at, value]): [string, string] => [path, JSON.stringify(put(data, at, value)) ?? 'null']);
  });
  await fc.assert(fc.asyncProperty(changed, async ([path, text]) => await loaded(path, text)), { numRuns: cases(600) });
}, patience(300_000));

test('reading YAML never throws, whatever the text', () => {
  fc.assert(fc.property(fc.oneof(yamlish, fc.string({ unit: 'binary' }), fc.string()), (text) => {
    const file = readYaml('any.yaml', text);
    for (const issue of file.issues) expect(issue.line).toBeGreaterThan(0);
    expect(file.at(['a', 0, 'b']).line).toBeGreaterThan(0);
  }), { numRuns: cases(2_000) });
});

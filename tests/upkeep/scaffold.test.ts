import { execFileSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { speciesId } from '../../src/upkeep/house/speciesId.js';
import { newRule } from '../../src/upkeep/scaffold/newRule.js';
import { newSource } from '../../src/upkeep/scaffold/newSource.js';
import { newSpecies } from '../../src/upkeep/scaffold/newSpecies.js';
import { vet } from '../../src/upkeep/vet.js';
import { readParts } from '../../src/knowledge/read/readKnowledge.js';
import { removeTinyFolders, tinyFolder } from '../knowledge/tinyFolder.js';
import { root } from '../shipped.js';

afterAll(removeTinyFolders);

const sparebud = (...words: readonly string[]): string => execFileSync(process.execPath, ['--import', 'tsx', join(root, 'src/cli/main.ts'), ...words], { encoding: 'utf8', cwd: root });
const { parts } = readParts(tinyFolder());

test('an id is the name in plain letters', () => {
  expect(['Acer × freemanii', 'Acer tataricum subsp. ginnala', 'Rhododendron ×obtusum', 'Crataegus'].map(speciesId)).toEqual(['acer-x-freemanii', 'acer-tataricum-subsp-ginnala', 'rhododendron-x-obtusum', 'crataegus']);
});

describe('a new species', () => {
  test('stands under its genus, and says in comments what each parent passes on', () => {
    const { path, text } = newSpecies('Fictaria rubra', undefined, parts);
    expect(path).toBe('species/taxa/fictaria-rubra.yaml');
    expect(parse(text)).toEqual({ name: 'Fictaria rubra', parent: 'fictaria', commonNames: { en: ['TODO the name that growers use'] }, traits: null });
    expect(text).toMatch(/how bare wood buds \(good, fair, poor, none\); fictaria says, by a-handbook\n {2}#~ budding\.bareWood: \{ is: good, source: TODO \}/);
    expect(text).toMatch(/coldest night it grows in, in °C \(-10 to 25\); no parent says\n {2}#~ growth\.minNightC: \{ is: TODO, source: TODO \}/);
  });

  test('takes its names over from where they are listed', () => {
    const made = newSpecies('Fictaria parva', undefined, parts);
    expect(made.memberOf).toBe('fictaria-alba');
    expect(parse(made.text)).toMatchObject({ synonyms: ['Fictaria minima'] });
  });

  test('of an unknown genus has to name its group', () => {
    expect(() => newSpecies('Novella prima', undefined, parts)).toThrow(/no genus `novella`[^]*--parent: invented-broadleaf/);
    expect(newSpecies('Novella prima', 'invented-broadleaf', parts).path).toBe('species/taxa/novella-prima.yaml');
    expect(() => newSpecies('Fictaria alba', undefined, parts)).toThrow(/there already/);
  });

  test('goes from new to a green vet on the command line', async () => {
    const folder = tinyFolder();
    expect(sparebud('new', 'species', 'Fictaria parva', '--parent', 'fictaria', '--folder', folder)).toBe('wrote species/taxa/fictaria-parva.yaml\ntook it out of the members of species/taxa/fictaria-alba.yaml\n');
    const path = join(folder, 'species/taxa/fictaria-parva.yaml');
    expect((await vet(folder)).issues.map(({ message }) => message)).toEqual(['`en` is still to be written']);
    writeFileSync(path, readFileSync(path, 'utf8').replace(/TODO.*(?=\])/, 'little fiction tree')
      .replace('#~ budding.bareWood: { is: good, source: TODO', 'budding.bareWood: { is: poor, source: a-handbook'));
    expect(sparebud('vet', '--mend', folder)).toMatch(/mended species\/taxa\/fictaria-parva\.yaml\n[^]*no fault/);
    expect(readFileSync(path, 'utf8')).toBe('# yaml-language-server: $schema=../../.editor/species.schema.json\nname: Fictaria parva\nparent: fictaria\ncommonNames: { en: [little fiction tree] }\nsynonyms: [Fictaria minima]\ntraits:\n  budding.bareWood: { is: poor, source: a-handbook }\n');
  }, 60_000);
});

describe('a new rule', () => {
  test('names the facts of its work and the sources of its neighbours, and says what is left to be written', async () => {
    const { path, text } = newRule('roots/late', ['repot'], 'risky', parts);
    expect(text).toMatch(/#~ {3}roots\.shareRemoved: share of roots taken/);
    expect(text).toMatch(/Rules on this work cite: a-handbook, common-practice/);
    const { issues } = await vet(tinyFolder({ [path]: text }));
    expect(issues.map(({ message }) => message.split(' ')[0])).toEqual(['`title`', '`when`', '`because`', '`sources`', '`examples`']);
  });

  test('is refused in words where it cannot be', () => {
    expect(() => newRule('roots/too-many', ['repot'], 'risky', parts)).toThrow(/there already/);
    expect(() => newRule('Late', ['repot'], 'risky', parts)).toThrow(/theme\/name/);
    expect(() => newRule('roots/late', ['repott'], 'risky', parts)).toThrow(/did you mean `repot`/);
  });
});

test('a new source stands in its place by the alphabet, the rest untouched, and says what is left to be told', () => {
  const before = '# Sources\nanother: { title: Another }\nlast:\n  title: The last\n';
  expect(newSource('invented-2001', { title: 'Roots: an invention', year: '2001', from: 'read' }, before)).toMatch(/^# Sources\nanother: \{ title: Another \}\ninvented-2001:\n {2}title: "Roots: an invention"\n {2}year: 2001\n {2}from: read\n {2}grade: TODO .*\n {2}studied: "TODO .*\nlast:\n {2}title: The last\n$/);
  expect(newSource('zeta', {}, before)).toMatch(/The last\nzeta:\n {2}title: TODO/);
  expect(() => newSource('last', {}, before)).toThrow(/there already/);
});

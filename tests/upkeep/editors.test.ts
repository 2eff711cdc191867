import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { writeEditorSchemas } from '../../src/upkeep/editorSchemas.js';
import { newRule } from '../../src/upkeep/scaffold/newRule.js';
import { newSpecies } from '../../src/upkeep/scaffold/newSpecies.js';
import { root, shippedParts } from '../shipped.js';
import { type Editor, openEditor } from './languageServer.js';

/* Scaffolds as they open in an editor: yaml-language-server finds the schema by the modeline, completes and explains. */
const folder = mkdtempSync(join(tmpdir(), 'editor-'));
let editor: Editor;
beforeAll(async () => {
  writeEditorSchemas(folder, shippedParts);
  editor = await openEditor();
}, 60_000);
afterAll(() => {
  editor.close();
  rmSync(folder, { recursive: true });
});

const species = newSpecies('Acer novum', undefined, shippedParts);
const rule = newRule('roots/invented', ['repot'], 'risky', shippedParts);
const filled = (text: string, from: string, to: string): string => {
  expect(text).toContain(from);
  return text.replaceAll('|', '/').replace(from, to);
};
const inSpecies = (from: string, to: string): [string, string] => [join(folder, species.path), filled(species.text, from, to)];
const inRule = (from: string, to: string): [string, string] => [join(folder, rule.path), filled(rule.text, from, to)];

describe('in a species that was just scaffolded, an editor completes', () => {
  test('the traits there are', async () => {
    const offered = await editor.complete(...inSpecies('traits:\n', 'traits:\n  |\n'));
    expect(offered).toEqual(expect.arrayContaining(['budding.bareWood', 'roots.killC', 'hazards.skin']));
  });
  test('the values that a trait may have', async () => {
    const offered = await editor.complete(...inSpecies('traits:\n', 'traits:\n  budding.bareWood:\n    is: |\n'));
    expect(offered).toEqual(expect.arrayContaining(['good', 'fair', 'poor', 'none']));
  });
  test('values within braces, once a letter is written', async () => {
    const offered = await editor.complete(...inSpecies('traits:\n', 'traits:\n  budding.bareWood: { is: f| }\n'));
    expect(offered).toContain('fair');
  });
  test('the sources there are', async () => {
    const offered = await editor.complete(...inSpecies('traits:\n', 'traits:\n  budding.bareWood: { is: good, source: c| }\n'));
    expect(offered).toEqual(expect.arrayContaining(['common-practice', 'acer-forced-shoots']));
  });
  test('the parents there are, and no species', async () => {
    const offered = await editor.complete(...inSpecies('parent: acer', 'parent: |'));
    expect(offered).toEqual(expect.arrayContaining(['acer', 'temperate-deciduous']));
    expect(offered).not.toContain('acer-palmatum');
  });
});

describe('in a rule that was just scaffolded, an editor completes', () => {
  test('the facts that a condition may look at', async () => {
    const offered = await editor.complete(...inRule('  - TODO a condition', '  - |'));
    expect(offered).toEqual(expect.arrayContaining(['roots.shareRemoved', 'season.phase', 'species.budding.bareWood', 'any']));
  });
  test('the values that a fact may have', async () => {
    const offered = await editor.complete(...inRule('  - TODO a condition', '  - season.phase: |'));
    expect(offered).toEqual(expect.arrayContaining(['dormant', 'bud-swell']));
  });
  test('the comparisons that fit a number', async () => {
    const offered = await editor.complete(...inRule('  - TODO a condition', '  - roots.shareRemoved:\n      |'));
    expect(offered).toEqual(expect.arrayContaining(['above', 'atMost', 'between']));
  });
  test('operations, what is at stake, and sources', async () => {
    expect(await editor.complete(...inRule('operations: [repot]', 'operations:\n  - |'))).toEqual(expect.arrayContaining(['repot', 'cut-back']));
    expect(await editor.complete(...inRule('costs: tree', 'costs: |'))).toEqual(expect.arrayContaining(['branch', 'looks']));
    expect(await editor.complete(...inRule('sources: [TODO]', 'sources:\n  - |'))).toEqual(expect.arrayContaining(['common-practice', 'rhs-containers']));
  });
  test('what an example gives, and how it fires', async () => {
    expect(await editor.complete(...inRule('  - TODO leave', '  - given:\n      |\n  - TODO leave'))).toEqual(expect.arrayContaining(['species', 'roots.shareRemoved']));
    expect(await editor.complete(...inRule('  - TODO leave', '  - fires: |\n  - TODO leave'))).toEqual(expect.arrayContaining(['certainly', 'possibly', 'never']));
  });
});

describe('where the pointer rests, an editor says what it means', () => {
  test('of a trait, with its unit', async () => {
    expect(await editor.hover(...inSpecies('traits:\n', 'traits:\n  roots.k|illC: { is: -9, source: common-practice }\n'))).toMatch(/roots.*\(°C\)/s);
  });
  test('of a fact in a condition', async () => {
    expect(await editor.hover(...inRule('  - TODO a condition', '  - season.gro|wingDaysLeft: { below: 60 }'))).toMatch(/days in which the tree can still grow/);
  });
  test('of a source, its title', async () => {
    expect(await editor.hover(...inRule('sources: [TODO]', 'sources: [rhs-con|tainers]'))).toContain(shippedParts.sources['rhs-containers']!.title.replace(/[[\]]/g, '\\$&'));
  });
});

test('a mistake is marked in the editor, where it stands', async () => {
  const [, text] = inSpecies('traits:\n', 'traits:\n  budding.bareWod: { is: good, source: common-practice }\n');
  const problems = await editor.problems(join(folder, 'species/taxa/with-a-slip.yaml'), text);
  expect(problems.map(({ message, range }) => [text.split('\n')[range.start.line], message])).toEqual([['  budding.bareWod: { is: good, source: common-practice }', expect.stringMatching(/bareWod/)]]);
});

test('what is shipped has no problem in an editor', async () => {
  for (const path of ['species/taxa/acer-palmatum.yaml', 'rules/roots/out-of-window.yaml', 'rules/cut/bleeds.yaml']) {
    const schema = path.startsWith('rules') ? 'rule' : 'species';
    expect(await editor.problems(join(folder, path), `# yaml-language-server: $schema=../../.editor/${schema}.schema.json\n${readFileSync(`${root}${path}`, 'utf8')}`), path).toEqual([]);
  }
});

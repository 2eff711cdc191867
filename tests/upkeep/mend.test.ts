import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { mend } from '../../src/upkeep/mend/mend.js';
import { mendRule } from '../../src/upkeep/mend/mendRule.js';
import { mendSpecies } from '../../src/upkeep/mend/mendSpecies.js';
import { vet } from '../../src/upkeep/vet.js';
import { type Changed, mended, removeTinyFolders, tinyFiles, tinyFolder } from '../knowledge/tinyFolder.js';
import { root, shippedParts, shippedRead } from '../shipped.js';

afterAll(removeTinyFolders);

const nigra = 'species/taxa/fictaria-x-nigra.yaml';
const tooMany = 'rules/roots/too-many.yaml';

const after = async (changed: Changed, file: string): Promise<string> => {
  const folder = tinyFolder(changed);
  await mend(folder);
  return readFileSync(join(folder, file), 'utf8');
};

describe('mending a species', () => {
  test('puts its members in order, comments with them, and takes out what the parent says', async () => {
    const untidy = `# What is known of it
parent:   fictaria
traits:
  # seen in three gardens
  growth.minNightC: {source: common-practice, is: 10}
  roots.phases: { is: [ bud-swell ], source: common-practice }
  budding.bareWood: { is: none, source: common-practice } # never
commonNames: { en: [ black fiction tree ] }
name: Fictaria × nigra
`;
    expect(await after({ [nigra]: untidy }, nigra)).toBe(`name: Fictaria × nigra
# What is known of it
parent: fictaria
commonNames: { en: [black fiction tree] }
traits:
  budding.bareWood: { is: none, source: common-practice } # never
  # seen in three gardens
  growth.minNightC: { is: 10, source: common-practice }
`);
  });

  test('leaves a file with a mistake in it as it is', async () => {
    const changed = mended(nigra, 'is: none', 'is: nonne');
    expect(await after(changed, nigra)).toBe(changed[nigra]);
  });

  test('keeps the lines that help as long as no trait is told', async () => {
    const begun = `name: Fictaria rubra\nparent: fictaria\ntraits:\n  #~ what it says\n  #~ growth.minNightC: { is: 5, source: TODO }\n`;
    expect(await after({ 'species/taxa/fictaria-rubra.yaml': begun }, 'species/taxa/fictaria-rubra.yaml')).toBe(begun);
  });

  test('takes the lines that only help away, once nothing is left to be written', async () => {
    const begun = `name: TODO\nparent: fictaria\ntraits:\n  #~ what it says\n  growth.minNightC: { is: 5, source: common-practice }\n`;
    expect(await after({ 'species/taxa/fictaria-rubra.yaml': begun }, 'species/taxa/fictaria-rubra.yaml')).toContain('#~');
    expect(await after({ 'species/taxa/fictaria-rubra.yaml': begun.replace('TODO', 'Fictaria rubra') }, 'species/taxa/fictaria-rubra.yaml')).not.toContain('#~');
  });
});

describe('mending a rule', () => {
  const bald = tinyFiles[tooMany]!.replace(/examples:[^]*/, 'examples:\n  - TODO\n');

  test('drafts the examples that it lacks, as comments that no program reads', async () => {
    const folder = tinyFolder({ [tooMany]: bald });
    const { drafts } = await mend(folder);
    expect(drafts[tooMany]).toBeGreaterThan(3);
    const text = readFileSync(join(folder, tooMany), 'utf8');
    expect(text).toMatch(/^ {2}#~ - \{ given: \{ species: fictaria-x-nigra, roots\.shareRemoved: 0\.4 \}, fires: never \}$/m);
    expect((await vet(folder)).issues).toMatchObject([{ file: tooMany, message: '`examples` is still to be written' }]);
  });

  test('drafts that a person confirms are all it needs', async () => {
    const confirmed = (await after({ [tooMany]: bald }, tooMany)).replace(/^.*TODO.*\n/m, '').replace(/#~ (?=- \{)/g, '');
    const folder = tinyFolder({ [tooMany]: confirmed });
    expect((await vet(folder)).issues).toEqual([]);
    expect((await mend(folder)).drafts[tooMany]).toBeUndefined();
    expect(readFileSync(join(folder, tooMany), 'utf8')).not.toContain('#~');
  });

  test('drafts are drawn anew each time, never twice over', async () => {
    const once = await after({ [tooMany]: bald }, tooMany);
    expect(await after({ [tooMany]: once }, tooMany)).toBe(once);
  });
});

describe('mending what is shipped', () => {
  const files = [...shippedRead.files.keys()].flatMap((file) => {
    const [, folder, id] = /^(species|rules)\/(?:\w+\/)?(.*)\.yaml$/.exec(file) ?? [];
    const text = readFileSync(`${root}${file}`, 'utf8');
    return folder === undefined ? [] : [{ file, text, mended: folder === 'species' ? mendSpecies(id!, text, shippedParts) : mendRule(text), again: (once: string) => (folder === 'species' ? mendSpecies(id!, once, shippedParts) : mendRule(once)) }];
  });

  test('keeps all that it says, and every comment', () => {
    const comments = (text: string): readonly string[] => (text.match(/(?<=^|\s)#.*$/gm) ?? []).toSorted();
    for (const { file, text, mended } of files) {
      expect(parse(mended), file).toEqual(parse(text));
      expect(comments(mended), file).toEqual(comments(text));
    }
  });

  test('a second time changes nothing more', () => {
    for (const { file, mended, again } of files) expect(again(mended), file).toBe(mended);
  });
});

import { execFileSync } from 'node:child_process';
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { bundle } from './bundle.js';
import { freshApp, question } from './packed.js';

/* Bytes, gzipped, of what an app loads of each entry point, as esbuild bundles it for browsers: at first, and with what single questions load. The advisor is to stay within 45 kB at first; its budget is what it came to last, with a little room. */
const kB = 1000;
const budgets: readonly (readonly [what: string, source: string, first: number, whole: number])[] = [
  ['the advisor', "export { createAdvisor } from 'sparebud'", 43.3 * kB, 78 * kB],
  ['all knowledge', "export { knowledge } from 'sparebud/knowledge'", 120 * kB, 120 * kB],
  ['one group of species', "import { knowledgeOf } from 'sparebud/knowledge/groups'; import { group } from 'sparebud/knowledge/groups/single-flush-pine'; export const knowledge = knowledgeOf(group)", 85 * kB, 85 * kB],
  ['notes', "export { withNotes } from 'sparebud/knowledge/notes'", 50 * kB, 50 * kB],
  ['German', "export { wording } from 'sparebud/wording/de'", 60 * kB, 60 * kB],
  ['places', "export { places } from 'sparebud/places'", 30 * kB, 30 * kB],
  ['packs', "export { extendKnowledge } from 'sparebud/extend'", 20 * kB, 20 * kB],
  ['pictures', "export { yearPicture, treePicture } from 'sparebud/picture'", 15 * kB, 15 * kB],
];
const app = freshApp('sizes', 'alone');

for (const [what, source, first, whole] of budgets) {
  test(`${what}: at most ${first / kB} kB at first, ${whole / kB} kB in all`, async () => {
    const sizes = await bundle(app, source);
    process.stdout.write(`${what}: ${(sizes.first / kB).toFixed(1)} kB at first, ${(sizes.whole / kB).toFixed(1)} kB in all, gzipped\n`);
    expect(sizes.first).toBeLessThanOrEqual(first);
    expect(sizes.whole).toBeLessThanOrEqual(whole);
  });
}

test('what is imported and not used is not loaded', async () => {
  const { first } = await bundle(app, "import { createAdvisor } from 'sparebud'; import { knowledge } from 'sparebud/knowledge'; import { places } from 'sparebud/places'; import { wording } from 'sparebud/wording/de'; export const none = 0;");
  expect(first).toBeLessThan(kB);
});

test('what is loaded at first answers a question whole; more is looked for only where a structure or earlier work is told', async () => {
  const { files, begins } = await bundle(app, "export { createAdvisor } from 'sparebud'; export { knowledge } from 'sparebud/knowledge'");
  const alone = freshApp('first-load', 'alone');
  for (const name of begins) writeFileSync(join(alone, name), files.get(name)!);
  const ask = (tree: object): string => execFileSync(process.execPath, ['--input-type=module', '--eval', `
    import { createAdvisor, knowledge } from './app.js';
    const shown = await createAdvisor(knowledge).assess(${JSON.stringify({ ...question, tree: { ...question.tree, ...tree } })}).then(({ verdict }) => verdict, ({ code }) => code);
    process.stdout.write(shown);`], { cwd: alone, encoding: 'utf8' });
  for (const tree of [{}, { vigour: 'weak', phase: 'leaf-fall', standing: 'greenhouse' }]) expect(ask(tree)).toMatch(/^(?:allowed|risky|advise-against)$/);
  for (const tree of [{ structure: {} }, { log: [{ op: 'repot', date: '2026-03' }] }, { lastRepotted: '2024' }]) expect(ask(tree)).toBe('ERR_MODULE_NOT_FOUND');
}, 60_000);

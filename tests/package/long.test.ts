import { execFileSync, spawnSync } from 'node:child_process';
import { readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { build as esbuild } from 'esbuild';
import { expect, test } from 'vitest';
import { build as vite } from 'vite';
import { root } from '../shipped.js';
import { appSource, freshApp, question } from './packed.js';

/* Consumers that take longer: `npm run long`. */
const later = process.env['LONG'] === undefined;

const typed = `import { createAdvisor, SparebudError, type Assessment, type Knowledge } from 'sparebud';
import { knowledge } from 'sparebud/knowledge';
import { knowledgeOf } from 'sparebud/knowledge/groups';
import { group } from 'sparebud/knowledge/groups/single-flush-pine';
import { withNotes } from 'sparebud/knowledge/notes';
import { places } from 'sparebud/places';
import { yearPicture } from 'sparebud/picture';

const pines: Knowledge = knowledgeOf(group);
const answer: Assessment = await createAdvisor(knowledge, { places }).assess(${JSON.stringify(question)});
const verdict: 'allowed' | 'risky' | 'advise-against' = answer.verdict;
// @ts-expect-error a verdict is not a number
const wrong: number = answer.verdict;
export const all = [pines, verdict, wrong, withNotes(pines), yearPicture, SparebudError];
`;

for (const [module, resolution] of [['nodenext', 'nodenext'], ['esnext', 'bundler']] as const) {
  test.skipIf(later)(`TypeScript that resolves as ${resolution} finds the types of every entry point`, () => {
    const app = freshApp(`types-${resolution}`, 'with-dependencies', { 'app.ts': typed });
    const found = (): string => spawnSync(join(root, 'node_modules/.bin/tsc'), ['--noEmit', '--strict', '--target', 'es2022', '--module', module, '--moduleResolution', resolution, 'app.ts'], { cwd: app, encoding: 'utf8' }).stdout;
    expect(found()).toBe('');
    writeFileSync(join(app, 'app.ts'), typed.replace('// @ts-expect-error a verdict is not a number\n', ''));
    expect(found()).toContain('TS2322');
  }, 120_000);
}

/** Runs a bundle where code from text is refused, and hands back what it says. */
const says = (app: string, file: string): string => {
  writeFileSync(join(app, 'say.mjs'), `import { answers } from './${file}'; process.stdout.write(await answers());`);
  return execFileSync(process.execPath, ['--disallow-code-generation-from-strings', 'say.mjs'], { cwd: app, encoding: 'utf8' });
};
let kept: string | undefined;
const expected = (): string => (kept ??= says(freshApp('long-node', 'with-dependencies', { 'app.js': appSource }), 'app.js'));

test.skipIf(later)('vite builds it for browsers, and the build answers the same, byte for byte', async () => {
  const app = freshApp('vite', 'alone', { 'app.js': appSource });
  await vite({ root: app, logLevel: 'error', configFile: false, build: { outDir: 'out', lib: { entry: join(app, 'app.js'), formats: ['es'], fileName: 'bundled' } } });
  expect(says(app, 'out/bundled.js')).toBe(expected());
  for (const name of readdirSync(join(app, 'out'))) expect(readFileSync(join(app, 'out', name), 'utf8')).not.toMatch(/from\s*["'](?:node:|json-rules-engine|jsonpath)/);
}, 120_000);

for (const [what, conditions] of [['React Native', ['react-native', 'import']], ['a worker at the edge', ['workerd', 'worker']], ['no condition at all', []]] as const) {
  test.skipIf(later)(`resolved for ${what}, it stands alone and answers the same, byte for byte`, async () => {
    const app = freshApp(`resolved-${what.replaceAll(' ', '-')}`, 'alone', { 'app.js': appSource });
    await esbuild({ entryPoints: ['app.js'], absWorkingDir: app, bundle: true, splitting: true, format: 'esm', platform: 'neutral', conditions: [...conditions], mainFields: [], outdir: 'out' });
    expect(says(app, 'out/app.js')).toBe(expected());
  }, 60_000);
}

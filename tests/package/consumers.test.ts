import { execFileSync } from 'node:child_process';
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { chromium } from 'playwright-core';
import { expect, test } from 'vitest';
import { chromiumPath } from '../browser/chromium.js';
import { served } from '../browser/served.js';
import { tinyFiles } from '../knowledge/tinyFolder.js';
import { bundle } from './bundle.js';
import { appSource, freshApp, packed, packedFiles, question } from './packed.js';

const inNode = freshApp('node', 'with-dependencies', {
  'app.js': appSource,
  'esm.js': "import { answers } from './app.js'; process.stdout.write(await answers());",
  'commonjs.cjs': "import('./app.js').then(async ({ answers }) => { process.stdout.write(await answers()); });",
});
const run = (file: string, ...flags: readonly string[]): string => execFileSync(process.execPath, [...flags, file], { cwd: inNode, encoding: 'utf8' });

/** What everyone is to be answered. */
const expected = run('esm.js');

test('Node, as a module: the answers that are expected, and the coded errors', () => {
  const { assessment, built, refused, picture } = JSON.parse(expected) as { readonly assessment: { readonly verdict: string }; readonly built: { readonly findings: readonly object[] }; readonly refused: readonly string[]; readonly picture: boolean };
  expect(assessment.verdict).toBe('advise-against');
  expect(JSON.stringify(built.findings)).toContain('"fact":"structure.');
  expect(refused).toEqual(['unknown-species', 'unknown-operation']);
  expect(picture).toBe(true);
});

test('Node, from CommonJS by import(): the same, byte for byte', () => {
  expect(run('commonjs.cjs')).toBe(expected);
});

test('in Node an error is one class, whichever entry point it comes from', () => {
  writeFileSync(join(inNode, 'errors.js'), `import { createAdvisor, SparebudError } from 'sparebud';
    import { knowledge } from 'sparebud/knowledge';
    import { extendKnowledge } from 'sparebud/extend';
    import { readKnowledge } from 'sparebud/node';
    const refused = async (work) => { try { await work(); return 'nothing'; } catch (error) { return error instanceof SparebudError; } };
    process.stdout.write(JSON.stringify(await Promise.all([async () => await createAdvisor(knowledge).assess({}), () => extendKnowledge(knowledge, { nonsense: 1 }), () => readKnowledge('./nowhere')].map(refused))));`);
  expect(run('errors.js')).toBe('[true,true,true]');
});

test('the command finds all its parts in the package: threads, and what maintainers run on a folder of their own', () => {
  const sparebud = (...words: readonly string[]): string => execFileSync(process.execPath, ['node_modules/sparebud/dist/cli/main.js', ...words], { cwd: inNode, encoding: 'utf8' });
  writeFileSync(join(inNode, 'lines.jsonl'), `${JSON.stringify(question)}\n${JSON.stringify({ ...question, date: '2026-03-20' })}\n`);
  const lines = sparebud('ask', '--lines', 'lines.jsonl', '--jobs', '2', '--fields', 'verdict').trim().split('\n');
  expect(lines).toEqual(sparebud('ask', '--lines', 'lines.jsonl', '--fields', 'verdict').trim().split('\n'));
  expect(lines[0]).toContain('advise-against');
  for (const [path, text] of Object.entries(tinyFiles)) {
    mkdirSync(dirname(join(inNode, 'own', path)), { recursive: true });
    writeFileSync(join(inNode, 'own', path), text);
  }
  expect(sparebud('vet', 'own')).not.toContain('Cannot find module');
  for (const command of ['vet', 'cover', 'shift', 'new', 'keepers', 'explain']) expect(sparebud(command, '--help')).toContain('Usage: sparebud');
}, 60_000);

test('any place that is not Node gets modules that stand alone, and answers the same, byte for byte', async () => {
  const app = freshApp('elsewhere', 'alone', { 'own.js': appSource });
  const { files } = await bundle(app, "export { answers } from './own.js'");
  for (const [name, bytes] of files) writeFileSync(join(inNode, name.replace(/^app\.js$/, 'bundled.js')), bytes);
  writeFileSync(join(inNode, 'elsewhere.js'), "import { answers } from './bundled.js'; process.stdout.write(await answers());");
  /* Code from text is refused to it, as a strict content policy would. */
  expect(run('elsewhere.js', '--disallow-code-generation-from-strings')).toBe(expected);
}, 60_000);

const page = '<!doctype html><html lang="en"><title>An app</title><script type="module" src="page.js"></script>';
const show = "import { answers } from './app.js'; document.title = await answers().catch((error) => String(error));";
const worker = "import { answers } from './app.js'; answers().then((answer) => postMessage(answer), (error) => postMessage(String(error)));";
const showWorker = "const worker = new Worker('worker.js', { type: 'module' }); worker.onmessage = ({ data }) => { document.title = data; }; worker.onerror = ({ message }) => { document.title = message; };";

/* Without a bundler too: an address of the package's own file in the place of each name. */
const addresses: Readonly<Record<string, string>> = { sparebud: 'dist/browser/index.js', 'sparebud/knowledge': 'dist/knowledge/bundled.js', 'sparebud/places': 'dist/season/places.js', 'sparebud/picture': 'dist/browser/picture.js' };
const unbundled = new Map([['app.js', appSource.replace(/from '(sparebud[^']*)'/g, (_, name: string) => `from './sparebud/${addresses[name]!}'`)], ...packedFiles.filter((name) => name.endsWith('.js')).map((name): [string, string] => [`sparebud/${name}`, readFileSync(join(packed, name), 'utf8')])]);

for (const [what, files] of [
  ['a page bundled by esbuild', async () => new Map([...(await bundle(freshApp('page', 'alone', { 'own.js': appSource }), "export { answers } from './own.js'")).files].map(([name, bytes]) => [name, Buffer.from(bytes).toString()]))],
  ['a page without a bundler', async () => unbundled],
] as const) {
  for (const [where, own] of [['the page', { 'page.js': show }], ['a web worker', { 'page.js': showWorker, 'worker.js': worker }]] as const) {
    test.skipIf(chromiumPath === undefined)(`${what}, in chromium under a strict content policy, in ${where}: the same answer, byte for byte, and nothing stopped`, async () => {
      const { address, stop } = await served(new Map<string, string>([['index.html', page], ...(await files()), ...Object.entries(own)]));
      const browser = await chromium.launch({ executablePath: chromiumPath!, args: ['--no-sandbox'] });
      try {
        const opened = await browser.newPage();
        const complaints: string[] = [];
        opened.on('console', (message) => { if (message.type() === 'error' && !message.text().includes('404')) complaints.push(message.text()); });
        opened.on('pageerror', (error) => complaints.push(error.message));
        await opened.goto(address);
        await opened.waitForFunction(() => document.title !== 'An app', undefined, { timeout: 30_000 });
        expect(await opened.title()).toBe(expected);
        expect(complaints).toEqual([]);
      } finally {
        await browser.close();
        stop();
      }
    }, 90_000);
  }
}

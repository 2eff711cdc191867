import { readFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { build, type Metafile, type Plugin } from 'esbuild';
import { leanEngine } from './leanEngine.js';

/**
 * What json-rules-engine asks of other packages, as far as we use it: no listener, no path into a fact, no key of a cache, and no copy of a condition, since each run has an engine of its own.
 *
 * jsonpath-plus holds code paths that a strict content policy stops, and the others are dead weight; each says so if it is ever reached.
 */
const standIns: Readonly<Record<string, string>> = {
  'jsonpath-plus': "export const JSONPath = () => { throw new Error('no paths into facts in this build'); };",
  clone: 'export default (value) => value;',
  'hash-it': "export default () => { throw new Error('no cached facts in this build'); };",
  eventemitter2: "export default class { async emitAsync() { return []; } on() { throw new Error('no listeners in this build'); } }",
};

export const standIn: Plugin = {
  name: 'stand-in',
  setup: ({ onLoad, onResolve }) => {
    onResolve({ filter: new RegExp(`^(${Object.keys(standIns).join('|')})$`) }, ({ path }) => ({ path, namespace: 'stand-in' }));
    onLoad({ filter: /./, namespace: 'stand-in' }, ({ path }) => ({ contents: standIns[path]!, loader: 'js' }));
    /* The tables of the moon: made at import, so that they would stay though nothing asks for the moon. */
    onLoad({ filter: /suncalc.index\.js$/ }, ({ path }) => ({ contents: readFileSync(path, 'utf8').replaceAll('new Int32Array', '/* @__PURE__ */ new Int32Array'), loader: 'js' }));
    onLoad({ filter: /json-rules-engine.dist.[\w-]+\.js$/ }, ({ path }) => ({ contents: leanEngine(readFileSync(path, 'utf8')), loader: 'js' }));
  },
};

/** What is loaded when it is first needed builds on all that was loaded at first: told so by an import, esbuild makes one part of that, and not one for each way in which it is shared. */
export const oneFirstPart: Plugin = {
  name: 'one-first-part',
  setup: ({ onLoad, onResolve }) => {
    onResolve({ filter: /^\./ }, ({ path, kind, resolveDir }) => (kind === 'dynamic-import' ? { path: join(resolveDir, path), pluginData: 'later' } : undefined));
    onLoad({ filter: /\.js$/ }, ({ path, pluginData }) => (pluginData === 'later' ? { contents: `import ${JSON.stringify(resolve(browserEntries['index']!))};\n${readFileSync(path, 'utf8')}`, resolveDir: dirname(path) } : undefined));
  },
};

/** The entry points that need other packages, by the names that they have in dist/browser. */
export const browserEntries: Readonly<Record<string, string>> = { index: 'dist/index.js', picture: 'dist/picture/index.js', extend: 'dist/knowledge/packs/extendKnowledge.js' };

/** Writes dist/browser: modules that stand alone, for any place that is not Node; what several entry points share is one chunk, and so is what only one question needs. */
export const browserBuild = async (): Promise<Metafile> => {
  const { metafile } = await build({
    entryPoints: { ...browserEntries }, outdir: 'dist/browser', bundle: true, splitting: true, format: 'esm', platform: 'browser', target: 'es2022',
    minify: true, legalComments: 'none', metafile: true, plugins: [standIn, oneFirstPart], chunkNames: 'part-[hash]', logLevel: 'warning', logOverride: { 'ignored-bare-import': 'silent' },
  });
  return metafile;
};

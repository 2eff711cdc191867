import { build, type Metafile, type Plugin } from 'esbuild';

/**
 * What json-rules-engine asks of other packages, as far as we use it: no listener, no path into a fact, no key of a cache, and no copy of a condition, since each run has an engine of its own.
 *
 * jsonpath-plus holds code paths that a strict content policy stops, and the others are dead weight; each says so if it is ever reached.
 */
const standIns: Readonly<Record<string, string>> = {
  'jsonpath-plus': "exports.JSONPath = () => { throw new Error('no paths into facts in this build'); };",
  clone: 'module.exports = (value) => value;',
  'hash-it': "module.exports = () => { throw new Error('no cached facts in this build'); };",
  eventemitter2: "module.exports = function () {}; module.exports.prototype = { emitAsync: async () => [], on() { throw new Error('no listeners in this build'); } };",
};

const standIn: Plugin = {
  name: 'stand-in',
  setup: ({ onLoad, onResolve }) => {
    onResolve({ filter: new RegExp(`^(${Object.keys(standIns).join('|')})$`) }, ({ path }) => ({ path, namespace: 'stand-in' }));
    onLoad({ filter: /./, namespace: 'stand-in' }, ({ path }) => ({ contents: standIns[path]!, loader: 'js' }));
  },
};

/** The entry points that need other packages, by the names that they have in dist/browser. */
export const browserEntries: Readonly<Record<string, string>> = { index: 'dist/index.js', picture: 'dist/picture/index.js', extend: 'dist/knowledge/packs/extendKnowledge.js' };

/** Writes dist/browser: modules that stand alone, for any place that is not Node; what several entry points share is one chunk, and so is what only one question needs. */
export const browserBuild = async (): Promise<Metafile> => {
  const { metafile } = await build({
    entryPoints: { ...browserEntries }, outdir: 'dist/browser', bundle: true, splitting: true, format: 'esm', platform: 'browser', target: 'es2022',
    minify: true, legalComments: 'none', metafile: true, plugins: [standIn], chunkNames: 'part-[hash]', logLevel: 'warning',
  });
  return metafile;
};

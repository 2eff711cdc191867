import { readFileSync } from 'node:fs';
import { builtinModules } from 'node:module';
import { build, type Metafile, type Plugin } from 'esbuild';
import { oneFirstPart, standIn } from './browserBuild.js';

/** What is started by a path and not imported: the threads of the command line. */
const startedByPath = ['./dist/cli/lines/answerThread.js', './dist/upkeep/shift/shiftThread.js'];

interface Manifest {
  readonly bin: Readonly<Record<string, string>>;
  readonly dependencies: Readonly<Record<string, string>>;
  readonly exports: Readonly<Record<string, string | Readonly<Record<string, string>>>>;
}

/** Older packages require what Node holds, which a module cannot: it is imported for them. */
const builtIns: Plugin = {
  name: 'built-ins',
  setup: ({ onLoad, onResolve }) => {
    onResolve({ filter: new RegExp(`^(?:node:.*|${builtinModules.join('|')})$`) }, ({ kind, path }) => (kind === 'require-call' ? { path, namespace: 'built-in' } : undefined));
    onLoad({ filter: /./, namespace: 'built-in' }, ({ path }) => ({ contents: ['process', 'node:process'].includes(path) ? 'module.exports = process;' : `export * from '${path}';`, loader: 'js' }));
  },
};

/** The modules that the package offers in Node, by their names in dist: those of its entry points and its command, and what these start. */
const offered = ({ bin, exports }: Manifest): readonly string[] => {
  const targets = Object.values(exports).flatMap((target) => (typeof target === 'string' ? [] : [target['node'] ?? target['default']!]));
  return [...Object.values(bin).map((path) => `./${path}`), ...targets.filter((target) => !target.includes('*')), ...startedByPath];
};

/** Writes the modules that the package offers in Node, each over itself, with all that they import in the chunks of dist/parts: a few files load several times faster than some hundred. */
export const nodeBuild = async (): Promise<Metafile> => {
  const manifest = JSON.parse(readFileSync('package.json', 'utf8')) as Manifest;
  const { metafile } = await build({
    entryPoints: [...offered(manifest)], outdir: 'dist', outbase: 'dist', allowOverwrite: true, bundle: true, splitting: true, format: 'esm', platform: 'node', target: 'node20',
    external: Object.keys(manifest.dependencies), legalComments: 'none', charset: 'utf8', metafile: true, plugins: [standIn, builtIns, oneFirstPart], chunkNames: 'parts/[hash]', logLevel: 'warning', logOverride: { 'ignored-bare-import': 'silent' },
  });
  return metafile;
};

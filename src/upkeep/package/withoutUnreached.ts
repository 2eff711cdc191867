import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { build } from 'esbuild';

/** What is started by a path and not imported: the threads of the command line, and the demo of this repository. */
const startedByPath = ['dist/cli/demo.js', 'dist/cli/lines/answerThread.js', 'dist/upkeep/shift/shiftThread.js'];

interface Manifest {
  readonly bin: Readonly<Record<string, string>>;
  readonly exports: Readonly<Record<string, string | Readonly<Record<string, string>>>>;
}

/** The modules that the package offers in Node: those of its entry points, its command, and what these start. */
const offered = (): readonly string[] => {
  const { bin, exports } = JSON.parse(readFileSync('package.json', 'utf8')) as Manifest;
  const targets = Object.values(exports).flatMap((target) => (typeof target === 'string' ? [] : [target['node'] ?? target['default']!]));
  return [...Object.values(bin), ...targets.filter((target) => !target.includes('*')), ...startedByPath];
};

/** Takes out of dist what contributors run and no user reaches: modules of upkeep that nothing offered imports, and the types of command line and upkeep. */
export const withoutUnreached = async (): Promise<void> => {
  const { metafile } = await build({ entryPoints: [...offered()], outdir: 'unwritten', bundle: true, splitting: true, format: 'esm', platform: 'node', packages: 'external', write: false, metafile: true, logLevel: 'warning' });
  const reached = new Set(Object.keys(metafile.inputs));
  for (const name of readdirSync('dist', { recursive: true, encoding: 'utf8' })) {
    if (/^(?:upkeep|cli)\/.*\.(?:js|d\.ts)$/.test(name) && !reached.has(`dist/${name}`)) rmSync(`dist/${name}`);
  }
};

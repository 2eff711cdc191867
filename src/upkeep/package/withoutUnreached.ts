import { readdirSync, readFileSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path/posix';
import type { Metafile } from 'esbuild';

interface Manifest {
  readonly exports: Readonly<Record<string, string | Readonly<Record<string, string>>>>;
}

/** The declarations that these come to, themselves among them. */
const declarationsFrom = (names: readonly string[]): ReadonlySet<string> => {
  const reached = new Set(names);
  for (const name of reached) {
    for (const [, from] of readFileSync(name, 'utf8').matchAll(/(?:from|import) ?\(?['"](\.[^'"]*)\.js['"]/g)) reached.add(`${join(dirname(name), from!)}.d.ts`);
  }
  return reached;
};

/** Takes out of dist what no user reaches: modules that stand in a bundle by now or that contributors alone run, and the types that no entry point comes to. */
export const withoutUnreached = (...builds: readonly Metafile[]): void => {
  const { exports } = JSON.parse(readFileSync('package.json', 'utf8')) as Manifest;
  const targets = Object.values(exports).flatMap((target) => (typeof target === 'string' ? [] : Object.values(target))).map((target) => target.slice('./'.length));
  const files = readdirSync('dist', { recursive: true, encoding: 'utf8' }).map((name) => `dist/${name}`).filter((name) => /\.(?:js|d\.ts)$/.test(name));
  const offered = files.filter((name) => targets.some((target) => {
    const [before, after] = target.split('*') as [string, string | undefined];
    return after === undefined ? name === before : name.startsWith(before) && name.endsWith(after);
  }));
  const kept = new Set([...builds.flatMap(({ outputs }) => Object.keys(outputs)), ...offered, ...declarationsFrom(offered.filter((name) => name.endsWith('.d.ts')))]);
  for (const name of files) if (!kept.has(name)) rmSync(name);
};

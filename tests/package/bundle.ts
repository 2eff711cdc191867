import { gzipSync } from 'node:zlib';
import { build, type Metafile } from 'esbuild';

/** What a browser loads of an app: what it needs to begin, and what is loaded only when it is first asked for. */
export interface Bundle {
  readonly files: ReadonlyMap<string, Uint8Array>;
  /** The names of the files that it needs to begin. */
  readonly begins: readonly string[];
  readonly first: number;
  readonly whole: number;
}

const gzipped = (parts: readonly Uint8Array[]): number => gzipSync(Buffer.concat(parts), { level: 9 }).length;

const loadedFirst = ({ outputs }: Metafile, path: string, seen = new Set<string>()): ReadonlySet<string> => {
  seen.add(path);
  for (const { path: other, kind } of outputs[path]!.imports) if (kind === 'import-statement' && !seen.has(other)) loadedFirst({ inputs: {}, outputs }, other, seen);
  return seen;
};

/** An app bundled for browsers by esbuild, minified, its sizes in bytes gzipped. */
export const bundle = async (app: string, contents: string): Promise<Bundle> => {
  const { outputFiles, metafile } = await build({
    stdin: { contents, resolveDir: app, sourcefile: 'app.js' }, bundle: true, splitting: true, format: 'esm', platform: 'browser', target: 'es2022', minify: true,
    outdir: `${app}/out`, entryNames: 'app', write: false, metafile: true, absWorkingDir: app, logLevel: 'silent',
  });
  const files = new Map(outputFiles.map(({ path, contents: bytes }) => [path.slice(`${app}/out/`.length), bytes]));
  const begins = [...loadedFirst(metafile, 'out/app.js')].map((path) => path.slice('out/'.length));
  return { files, begins, first: gzipped(begins.map((name) => files.get(name)!)), whole: gzipped([...files.values()]) };
};

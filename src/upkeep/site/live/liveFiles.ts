import { readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { build } from 'esbuild';
import { parse } from 'yaml';

/** Everything that stands beside the live page, by its path in the site: its script in parts, its style, and the invented tree. */
export const liveFiles = async (root: string): Promise<ReadonlyMap<string, string>> => {
  const { outputFiles } = await build({
    entryPoints: { live: join(import.meta.dirname, 'live.browser.ts') }, absWorkingDir: root, outdir: 'live', bundle: true, splitting: true, format: 'esm', platform: 'browser', target: 'es2022', minify: true, write: false,
    /* Chunks of the package import others for their order alone; nothing in it has an effect by being imported. */
    logOverride: { 'ignored-bare-import': 'silent' },
  });
  return new Map([
    ...outputFiles.map(({ path, text }): [string, string] => [`live/${basename(path)}`, text]),
    ['live/live.css', readFileSync(join(import.meta.dirname, 'live.css'), 'utf8')],
    ['live/sample.json', JSON.stringify(parse(readFileSync(join(root, 'docs/demo/keepers-pine.yaml'), 'utf8')))],
  ]);
};

import { join } from 'node:path';
import { build } from 'esbuild';
import { type Page, sections } from './page.js';

/** What the search looks through: each page by its path, title, part of the site and other words. */
export const searchEntries = (pages: readonly Page[]): string =>
  JSON.stringify(pages.map(({ path, title, section, words }) => ({ path, title, kind: section === undefined ? '' : sections[section], words })));

/** The search of the pages as one script for browsers. */
export const searchScript = async (): Promise<string> => {
  const { outputFiles } = await build({ entryPoints: [join(import.meta.dirname, 'search.browser.ts')], bundle: true, format: 'esm', minify: true, write: false, target: 'es2022' });
  return outputFiles[0]!.text;
};

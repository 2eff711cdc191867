import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { createAdvisor } from '../../advisor.js';
import { readKnowledge } from '../../knowledge/read/readKnowledge.js';
import { yearPicture } from '../../picture/yearPicture.js';
import { stationsIn } from '../wholeCorpus.js';
import { brokenLinks } from './brokenLinks.js';
import { liveFiles } from './live/liveFiles.js';
import { laidOut } from './page.js';
import { sampleYears } from './sampleYears.js';
import { searchEntries, searchScript } from './searchFiles.js';
import { sitePages, yearPath } from './sitePages.js';

/* `npm run docs`: the pages of docs/site, from the knowledge of this folder and docs/*.md; typedoc adds the API. */
const root = process.cwd();
const site = join(root, 'docs/site');
const advisor = createAdvisor(readKnowledge(root), { places: stationsIn(root) });
const years = await sampleYears(advisor);

const markdown = new Map(['docs/guides', 'docs'].flatMap((folder) => readdirSync(join(root, folder)).filter((name) => name.endsWith('.md')).sort().map((name): [string, string] => [`${folder}/${name}`, readFileSync(join(root, folder, name), 'utf8')])));
const pages = await sitePages(advisor, markdown, years);
const files = new Map(pages.map((page): [string, string] => [page.path, laidOut(page)]));
const { wording } = advisor.knowledge;
for (const [id, year] of years) files.set(yearPath(id), yearPicture(year, (text, params = {}) => (wording[text] ?? text).replaceAll(/\{([^}]+)\}/g, (_, name: string) => params[name] ?? '')));
files.set('search.json', searchEntries(pages));
for (const name of ['site.css', 'icon.svg']) files.set(name, readFileSync(join(import.meta.dirname, name), 'utf8'));
files.set('search.js', await searchScript());
for (const [path, text] of await liveFiles(root)) files.set(path, text);

const broken = brokenLinks(files);
if (broken.length > 0) {
  process.stderr.write(`links that lead nowhere:\n${broken.join('\n')}\n`);
  process.exit(1);
}
rmSync(site, { recursive: true, force: true });
for (const [path, text] of files) {
  mkdirSync(dirname(join(site, path)), { recursive: true });
  writeFileSync(join(site, path), text);
}
process.stdout.write(`${pages.length} pages, ${years.size} years, ${Math.round([...files.values()].reduce((sum, text) => sum + text.length, 0) / 1024)} kB in docs/site\n`);

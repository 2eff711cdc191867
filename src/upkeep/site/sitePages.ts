import type { Advisor } from '../../advisor.js';
import type { Year } from '../../advice/year.js';
import type { IssueCode } from '../../knowledge/error.js';
import { errorPage, errorTexts } from './errorPage.js';
import { factPage, rulesByFact } from './factPage.js';
import { indexPages } from './indexPages.js';
import { livePage } from './live/livePage.js';
import { markdownPage } from './markdownPage.js';
import { operationPage } from './operationPage.js';
import type { Page } from './page.js';
import { rulePage } from './rulePage.js';
import { speciesCautions } from './speciesCautions.js';
import { speciesPage } from './speciesPage.js';

/** Where the picture of a species' year stands. */
export const yearPath = (id: string): string => `species/year/${id}.svg`;

/** Where a Markdown file of docs/ stands in the site. */
export const placedAt = (file: string): string => (file.startsWith('docs/guides/') ? file.slice('docs/'.length) : `guides/${file.slice('docs/'.length)}`).replace(/\.md$/, '.html');

/**
 * Every page of the site.
 *
 * @param markdown the files of docs/, by their paths
 * @param years the sample years of the species, by id
 */
export const sitePages = async (advisor: Advisor, markdown: ReadonlyMap<string, string>, years: ReadonlyMap<string, Year>): Promise<readonly Page[]> => {
  const { knowledge } = advisor;
  const placed = new Map([...markdown.keys()].map((file): [string, string] => [file, placedAt(file)]));
  const written = [...markdown].map(([file, text]) => ({ page: markdownPage(file, text, placed), guide: file.startsWith('docs/guides/') }));
  const cautions = await speciesCautions(knowledge);
  const looking = rulesByFact(knowledge);
  return [
    livePage,
    ...indexPages(knowledge, written.filter(({ guide }) => guide).map(({ page }) => page), written.filter(({ guide }) => !guide).map(({ page }) => page)),
    ...written.map(({ page }) => page),
    ...Object.values(knowledge.species).map((species) => {
      const year = years.get(species.id);
      return speciesPage(species, knowledge, cautions.get(species.id) ?? [], year === undefined ? undefined : { year, picture: yearPath(species.id) });
    }),
    ...Object.values(knowledge.rules).map((rule) => rulePage(rule, knowledge)),
    ...Object.values(knowledge.facts).map((fact) => factPage(fact, looking.get(fact.id) ?? [], knowledge)),
    ...advisor.operations().map((form) => operationPage(form, knowledge)),
    ...(Object.keys(errorTexts) as IssueCode[]).map(errorPage),
  ];
};

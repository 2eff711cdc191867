import { speciesLabel } from '../../advice/findings.js';
import type { IssueCode } from '../../knowledge/error.js';
import type { Knowledge, Species } from '../../knowledge/knowledge.js';
import { errorTexts } from './errorPage.js';
import { html, type Html } from './html.js';
import { link, type Page, type Section } from './page.js';
import { sourceEntries } from './sourceList.js';

const listPage = (section: Section, title: string, description: string, body: Html): Page => ({ path: `${section}/index.html`, title, section, description, words: '', body: html`<h1>${title}</h1><p>${description}</p>${body}` });

const families = <Each extends { readonly id: string }>(all: readonly Each[], separator: string): readonly (readonly [string, readonly Each[]])[] => {
  const by = new Map<string, Each[]>();
  for (const each of all) {
    const family = each.id.split(separator)[0]!;
    by.set(family, [...(by.get(family) ?? []), each]);
  }
  return [...by];
};

const speciesTree = (parent: string | undefined, all: readonly Species[]): Html => {
  const below = all.filter((each) => each.parent === parent);
  if (below.length === 0) return html``;
  return html`<ul>${below.map((each) => html`<li>${link(`species/${each.id}.html`, html`<i>${each.name}</i>`)}${speciesLabel(each) === each.name ? '' : ` ${speciesLabel(each)}`}${speciesTree(each.id, all)}</li>`)}</ul>`;
};

/** The pages that list what there is, and the first page. */
export const indexPages = (knowledge: Knowledge, guides: readonly Page[]): readonly Page[] => {
  const { species, rules, operations, facts, sources } = knowledge;
  const all = Object.values(species);
  const guideList = html`<ul>${guides.map(({ path, title, description }) => html`<li>${link(path, title)}: ${description}</li>`)}</ul>`;
  return [
    {
      path: 'index.html', title: 'Before the cut', description: 'May I do this, to this tree, here, on this day?', words: 'sparebud',
      body: html`<h1>Before the cut</h1>
<p class="lead">May I do this, to this tree, here, on this day? sparebud takes a proposed operation and answers allowed, risky or advise against, with reasons, sources, what was assumed, what would settle it, and a better time or way.</p>
<p>It is a library for TypeScript and JavaScript and a command line: ${all.filter(({ rank }) => rank === 'taxon').length} taxa and ${all.filter(({ rank }) => rank === 'member').length} further names, ${Object.keys(rules).length} rules, ${Object.keys(sources).length} sources.</p>
<h2>Begin here</h2>${guideList}`,
    },
    listPage('guides', 'Guides', 'For those who embed it, ask it from scripts, or mend its knowledge.', guideList),
    listPage('species', 'Species', 'Groups, genera and taxa: each passes its traits on to those below.', html`<div class="tree">${speciesTree(undefined, all)}</div>`),
    listPage('rules', 'Rules', 'Each says one thing, with its reason, its sources, and examples that run as tests.', html`${families(Object.values(rules), '/').map(([family, each]) => html`<h2>${family}</h2><ul>${each.map((rule) => html`<li>${link(`rules/${rule.id}.html`, rule.title)} <span class="verdict ${rule.verdict}">${rule.verdict.replace('-', ' ')}</span></li>`)}</ul>`)}`),
    listPage('operations', 'Operations', 'What can be asked about.', html`<ul class="columns">${Object.values(operations).map(({ id, label }) => html`<li>${link(`operations/${id}.html`, label)}</li>`)}</ul>`),
    listPage('facts', 'Facts', 'What rules look at: facts of a proposal, worked out or told, and traits of a species.', html`${families(Object.values(facts), '.').map(([family, each]) => html`<h2>${family}</h2><ul>${each.map(({ id, meaning }) => html`<li>${link(`facts/${id}.html`, html`<code>${id}</code>`)} ${meaning}</li>`)}</ul>`)}`),
    listPage('sources', 'Sources', 'Every source that a trait or rule names.', sourceEntries(knowledge)),
    listPage('errors', 'Errors', 'Codes that a program may look at.', html`<ul>${(Object.keys(errorTexts) as IssueCode[]).map((code) => html`<li>${link(`errors/${code}.html`, html`<code>${code}</code>`)} ${errorTexts[code][0]}</li>`)}</ul>`),
  ];
};

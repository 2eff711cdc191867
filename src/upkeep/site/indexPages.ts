import { speciesLabel } from '../../advice/findings.js';
import type { IssueCode } from '../../knowledge/error.js';
import type { Knowledge, Species } from '../../knowledge/knowledge.js';
import { operationForms } from '../../knowledge/operationForms.js';
import { errorTexts } from './errorPage.js';
import { html, type Html } from './html.js';
import { link, type Page, type Section, sections } from './page.js';
import { speciesName } from './speciesName.js';
import { sourceEntries } from './sourceList.js';
import { workGroups } from './workGroups.js';

const listPage = (section: Section, title: string, description: string, body: Html): Page => ({ path: `${section}/index.html`, title, section, description, words: '', body: html`<h1>${title}</h1><p>${description}</p>${body}` });

const families = <Each extends { readonly id: string }>(all: readonly Each[], separator: string): readonly (readonly [string, readonly Each[]])[] => {
  const by = new Map<string, Each[]>();
  for (const each of all) {
    const family = each.id.split(separator)[0]!;
    by.set(family, [...(by.get(family) ?? []), each]);
  }
  return [...by];
};

const speciesTree = (parent: string | undefined, all: readonly Species[], knowledge: Knowledge): Html => {
  const below = all.filter((each) => each.parent === parent);
  if (below.length === 0) return html``;
  return html`<ul>${below.map((each) => html`<li>${link(`species/${each.id}.html`, speciesName(each))}${speciesLabel(each, knowledge) === each.name ? '' : ` ${speciesLabel(each, knowledge)}`}${speciesTree(each.id, all, knowledge)}</li>`)}</ul>`;
};

/** Counts of what is there, each with the way to its list. */
const counts = ({ species, rules, operations, facts, sources }: Knowledge): readonly (readonly [Section, string])[] => {
  const ranked = (rank: Species['rank']): number => Object.values(species).filter((each) => each.rank === rank).length;
  return [
    ['species', `${ranked('taxon')} taxa, and ${ranked('member')} names more that their genus answers for: traits with their sources, and a year of each`],
    ['rules', `${Object.keys(rules).length}: why, when, unless, and examples that run as tests`],
    ['operations', `${Object.keys(operations).length} kinds of work, with their parameters, cautions and what follows`],
    ['facts', `${Object.keys(facts).length} facts and traits that rules look at`],
    ['sources', `${Object.keys(sources).length}, each marked as read, recalled, or practice`],
    ['errors', `${Object.keys(errorTexts).length} codes, what each means, and what to do`],
  ];
};

/**
 * The pages that list what there is, and the first page.
 *
 * @param guides for those who use it
 * @param reports what it was held against, and what it promises
 */
export const indexPages = (knowledge: Knowledge, guides: readonly Page[], reports: readonly Page[]): readonly Page[] => {
  const { species, rules, facts } = knowledge;
  const all = Object.values(species);
  const cards = html`<ul class="cards">${guides.map(({ path, title, description }) => html`<li><b>${link(path, title)}</b><br>${description}</li>`)}</ul>`;
  const reportList = html`<ul>${reports.map(({ path, title, description }) => html`<li>${link(path, title)}: ${description}</li>`)}</ul>`;
  return [
    {
      path: 'index.html', title: 'Before the cut', description: 'May I do this, to this tree, here, on this day?', words: 'sparebud',
      body: html`<h1>Before the cut</h1>
<p class="lead">May I do this, to this tree, here, on this day? sparebud answers <span class="verdict allowed">allowed</span>, <span class="verdict risky">risky</span> or <span class="verdict advise-against">advise against</span>, with its reasons and sources, what it took for granted, what would settle it, and a better time or way.</p>
<h2>Begin here</h2><ul class="cards"><li><b>${link('live/index.html', 'Ask before the cut')}</b><br>For growers: name the tree and the work, and watch the answer change as you tell more.</li></ul>${cards}
<h2>Look up</h2><dl class="facts">${counts(knowledge).map(([section, text]) => html`<dt>${link(`${section}/index.html`, sections[section])}</dt><dd>${text}</dd>`)}</dl>
<h2>Further pages</h2>${reportList}`,
    },
    listPage('guides', 'Guides', 'For those who embed it, ask it from scripts, or mend its knowledge.', html`${cards}<h2>Further pages</h2>${reportList}`),
    listPage('species', 'Species', 'Groups, genera and taxa: each passes its traits on to those below.', html`<div class="tree">${speciesTree(undefined, all, knowledge)}</div>`),
    listPage('rules', 'Rules', 'Each says one thing, with its reason, its sources, and examples that run as tests.', html`${families(Object.values(rules), '/').map(([family, each]) => html`<h2>${family}</h2><ul>${each.map((rule) => html`<li>${link(`rules/${rule.id}.html`, rule.title)} <span class="verdict ${rule.verdict}">${rule.verdict.replace('-', ' ')}</span></li>`)}</ul>`)}`),
    listPage('operations', 'Operations', 'What can be asked about.', html`${workGroups(operationForms(knowledge)).map(([name, forms]) => html`<h2>${name}</h2><ul class="columns">${forms.map(({ op, label }) => html`<li>${link(`operations/${op}.html`, label)}</li>`)}</ul>`)}`),
    listPage('facts', 'Facts', 'What rules look at: facts of a proposal, worked out or told, and traits of a species.', html`${families(Object.values(facts), '.').map(([family, each]) => html`<h2>${family}</h2><ul>${each.map(({ id, meaning }) => html`<li>${link(`facts/${id}.html`, html`<code>${id}</code>`)} ${meaning}</li>`)}</ul>`)}`),
    listPage('sources', 'Sources', 'Every source that a trait, a rule or a formula names.', sourceEntries(knowledge)),
    listPage('errors', 'Errors', 'Codes that a program may look at.', html`<ul>${(Object.keys(errorTexts) as IssueCode[]).map((code) => html`<li>${link(`errors/${code}.html`, html`<code>${code}</code>`)} ${errorTexts[code][0]}</li>`)}</ul>`),
  ];
};

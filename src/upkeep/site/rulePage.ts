import { stringify } from 'yaml';
import type { Knowledge, Rule } from '../../knowledge/knowledge.js';
import { strengthOf } from '../../advice/findings.js';
import { conditionText } from './conditionText.js';
import { html, type Html } from './html.js';
import { link, type Page } from './page.js';
import { sourceList } from './sourceList.js';

/** A text of a rule with its places for numbers named, as no tree is asked about here. */
const withNames = (text: string, { facts }: Knowledge): Html =>
  html`${text.split(/(\{[^}]+\})/).map((part) => (!part.startsWith('{') ? part : part === '{species.name}' ? html`<i>the species</i>` : html`<i>(${facts[part.slice(1, -1)]?.label ?? facts[part.slice(1, -1)]?.meaning ?? part})</i>`))}`;

/** A page of one rule: why, when, unless, examples, sources. */
export const rulePage = (rule: Rule, knowledge: Knowledge): Page => {
  const operations = rule.operations === 'all' ? Object.keys(knowledge.operations) : rule.operations;
  return {
    path: `rules/${rule.id}.html`, title: rule.title, section: 'rules', description: `${rule.title}: ${rule.verdict.replace('-', ' ')}.`, words: `${rule.id} ${rule.because}`,
    body: html`
<p class="chain">${link('rules/index.html', 'rules')} › ${rule.id}</p>
<h1>${rule.title}</h1>
<p><strong class="verdict ${rule.verdict}">${rule.verdict.replace('-', ' ')}</strong>; ${knowledge.wording[`costs.${rule.costs}`] ?? rule.costs}. Evidence: ${strengthOf(rule.sources.flatMap((id) => knowledge.sources[id] ?? []))}.</p>
<h2>Why</h2>
<p>${withNames(rule.because, knowledge)}</p>
${rule.note === undefined ? '' : html`<p>${rule.note}</p>`}
<h2>When</h2>
<p>On ${rule.operations === 'all' ? 'every operation' : operations.map((op, i) => html`${i === 0 ? '' : ', '}${link(`operations/${op}.html`, knowledge.operations[op]?.label ?? op)}`)}, if all of these hold:</p>
<ul>${rule.when.map((condition) => html`<li>${conditionText(condition, knowledge)}</li>`)}</ul>
${rule.unless.length === 0 ? '' : html`<h2>Unless</h2><ul>${rule.unless.map((each) => html`<li>${each.when.map((condition, i) => html`${i === 0 ? '' : ', and '}${conditionText(condition, knowledge)}`)}: ${each.because} <small>${sourceList(each.sources, knowledge)}</small></li>`)}</ul>`}
${rule.covers.length === 0 ? '' : html`<p>Where it fires for certain, these are not shown beside it: ${rule.covers.map((id, i) => html`${i === 0 ? '' : ', '}${link(`rules/${id}.html`, knowledge.rules[id]?.title ?? id)}`)}.</p>`}
<h2>Sources</h2>
<p>${sourceList(rule.sources, knowledge)}</p>
<h2>Examples</h2>
<p>They run as tests.</p>
<div class="wide"><table><thead><tr><th scope="col">given</th><th scope="col">fires</th></tr></thead><tbody>${rule.examples.map(({ given, fires }) => html`<tr><td>${Object.entries(given).map(([fact, value]) => html`<code>${fact}: ${Array.isArray(value) ? `[${value.join(', ')}]` : String(value)}</code> `)}</td><td>${fires}</td></tr>`)}</tbody></table></div>
<h2>As it is written</h2>
<pre><code>${stringify({ when: rule.when, ...(rule.unless.length === 0 ? {} : { unless: rule.unless }) }).trimEnd()}</code></pre>`,
  };
};

import { stringify } from 'yaml';
import type { Knowledge, Rule } from '../../knowledge/knowledge.js';
import { strengthOf } from '../../advice/findings.js';
import { setText } from '../../advice/setText.js';
import { capital } from './capital.js';
import { conditionText } from './conditionText.js';
import { factLabel } from './factLabel.js';
import { factLink } from './factLink.js';
import { html, type Html } from './html.js';
import { listed } from './listed.js';
import { link, type Page } from './page.js';
import { sourceList } from './sourceList.js';
import { valueText } from './valueText.js';

/** A text of a rule with its places for numbers named, as no tree is asked about here. */
const withNames = (text: string, { facts }: Knowledge): Html =>
  html`${text.split(/\{([^}]+)\}/).map((part, i, parts) => {
    if (i % 2 === 0) return part;
    const name = part === 'species.name' ? 'the species' : facts[part] === undefined ? part : `(${factLabel(facts[part])})`;
    return html`<i>${/(^|[.:?!] )$/.test(parts[i - 1]!) ? capital(name) : name}</i>`;
  })}`;

/** What a rule would have done instead: another time, other work, or the same in another way. */
const insteadText = ({ wait, do: work, set }: NonNullable<Rule['instead']>, knowledge: Knowledge): Html => {
  const { op, ...ways } = work ?? {};
  const [how, otherwise] = [setText(ways, knowledge), set === undefined ? '' : setText(set, knowledge)];
  return html`<ul>
${wait === undefined ? '' : html`<li>Wait for: ${[wait].flat().map((phase) => valueText(phase, undefined, knowledge)).join(', ')}.</li>`}
${op === undefined ? '' : html`<li>${link(`operations/${String(op)}.html`, knowledge.operations[String(op)]?.label ?? String(op))}${how === '' ? '' : `, ${how}`}.</li>`}
${otherwise === '' ? '' : html`<li>The same, ${otherwise}.</li>`}
</ul>`;
};

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
<p>On ${rule.operations === 'all' ? 'every operation' : listed(operations.map((op) => link(`operations/${op}.html`, knowledge.operations[op]?.label ?? op)))}, if all of these hold:</p>
<ul>${rule.when.map((condition) => html`<li>${conditionText(condition, knowledge)}</li>`)}</ul>
${rule.unless.length === 0 ? '' : html`<h2>Unless</h2>${rule.unless.map((each) => html`<p>${each.because} <small>${sourceList(each.sources, knowledge)}</small></p><ul>${each.when.map((condition) => html`<li>${conditionText(condition, knowledge)}</li>`)}</ul>`)}`}
${rule.reverses.length === 0 ? '' : html`<p>On purpose it is no stricter where these are worse: ${listed(rule.reverses.map((fact) => factLink(fact, knowledge)))}.</p>`}
${rule.covers.length === 0 ? '' : html`<p>Where it fires for certain, these are not shown beside it: ${listed(rule.covers.map((id) => link(`rules/${id}.html`, knowledge.rules[id]?.title ?? id)))}.</p>`}
${rule.instead === undefined ? '' : html`<h2>Instead</h2>${insteadText(rule.instead, knowledge)}`}
<h2>Sources</h2>
<p>${sourceList(rule.sources, knowledge)}</p>
<h2>Examples</h2>
<p>They run as tests.</p>
<div class="wide"><table><thead><tr><th scope="col">given</th><th scope="col">fires</th><th scope="col">says</th></tr></thead><tbody>${rule.examples.map(({ operation, given, fires, verdict }) => html`<tr><td>${listed(Object.entries({ ...(operation === undefined ? {} : { operation }), ...given }).map(([fact, value]) => html`<code>${fact}: ${Array.isArray(value) ? `[${value.join(', ')}]` : String(value)}</code>`))}</td><td>${fires}</td><td>${verdict?.replace('-', ' ')}</td></tr>`)}</tbody></table></div>
<h2>As it is written</h2>
<pre><code>${stringify({ when: rule.when, ...(rule.unless.length === 0 ? {} : { unless: rule.unless }) }).trimEnd()}</code></pre>`,
  };
};

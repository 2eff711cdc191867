import type { Knowledge } from '../../knowledge/knowledge.js';
import type { OperationForm } from '../../knowledge/operationForms.js';
import { html } from './html.js';
import { link, type Page } from './page.js';

/** A page of one operation: how to ask about it, and which rules judge it. */
export const operationPage = ({ op, label, parameters }: OperationForm, knowledge: Knowledge): Page => {
  const aliases = Object.entries(knowledge.operations[op]!.aliases);
  const rules = Object.values(knowledge.rules).filter(({ operations }) => operations !== 'all' && operations.includes(op));
  const always = Object.values(knowledge.rules).filter(({ operations }) => operations === 'all');
  const ruleList = (some: typeof rules) => html`<ul>${some.map((rule) => html`<li>${link(`rules/${rule.id}.html`, rule.title)} <span class="verdict ${rule.verdict}">${rule.verdict.replace('-', ' ')}</span></li>`)}</ul>`;
  return {
    path: `operations/${op}.html`, title: label, section: 'operations', description: `${label}: its parameters, and the rules that judge it.`, words: `${op} ${aliases.map(([alias]) => alias).join(' ')}`,
    body: html`
<p class="chain">${link('operations/index.html', 'operations')} › ${op}</p>
<h1>${label}</h1>
${aliases.length === 0 ? '' : html`<p>Also asked as ${aliases.map(([alias, set], i) => html`${i === 0 ? '' : ', '}${alias}${Object.keys(set).length === 0 ? '' : html` <small>(${Object.entries(set).map(([name, value]) => `${name}: ${String(value)}`).join(', ')})</small>`}`)}.</p>`}
<h2>Parameters</h2>
<div class="wide"><table><thead><tr><th scope="col">name</th><th scope="col">meaning</th><th scope="col">values</th><th scope="col">where it is not told</th></tr></thead><tbody>${parameters.map(({ name, meaning, type, unit, choices, bounds, assumed, ask }) => html`<tr><th scope="row"><code>${name}</code></th><td>${meaning}</td><td>${choices?.join(', ') ?? (bounds === undefined ? type : `${bounds[0]} to ${bounds[1]} ${unit ?? ''}`)}</td><td>${assumed !== undefined ? String(assumed) : ask !== undefined ? 'asked for' : 'unknown'}</td></tr>`)}</tbody></table></div>
<h2>Rules that name it</h2>
${ruleList(rules)}
<h2>Rules of every operation</h2>
${ruleList(always)}`,
  };
};

import { setText } from '../../advice/setText.js';
import type { FollowUp, Knowledge, OperationWord, Rule, WrittenCondition } from '../../knowledge/knowledge.js';
import type { OperationForm } from '../../knowledge/operationForms.js';
import { conditionText } from './conditionText.js';
import { factLink } from './factLink.js';
import { html, type Html } from './html.js';
import { listed } from './listed.js';
import { link, type Page } from './page.js';
import { valueText } from './valueText.js';

const naming = <Of extends { readonly operations: readonly string[] | 'all' }>(all: Readonly<Record<string, Of>>, op: string): readonly Of[] => Object.values(all).filter(({ operations }) => operations === 'all' || operations.includes(op));

const ruleItems = (rules: readonly Rule[]): Html => html`<ul>${rules.map((rule) => html`<li>${link(`rules/${rule.id}.html`, rule.title)} <span class="verdict ${rule.verdict}">${rule.verdict.replace('-', ' ')}</span></li>`)}</ul>`;

/** Where something is said: always, or where its conditions hold. */
const where = (when: readonly WrittenCondition[], knowledge: Knowledge): Html => (when.length === 0 ? html`` : html` <small>Where ${when.map((each, i) => html`${i === 0 ? '' : '; '}${conditionText(each, knowledge)}`)}</small>`);

const daysText = ({ days }: FollowUp, knowledge: Knowledge): Html => {
  const figure = (each: FollowUp['days'][number]): Html | string => (typeof each === 'number' ? String(each) : html`${each.times === 1 ? '' : `${each.times} times `}its ${factLink(`species.${each.trait}`, knowledge)}`);
  return html`${figure(days[0])} to ${figure(days[1])} days`;
};

/** How hard it is on the tree, and what makes it harder. */
const strainRows = ({ strain, daysNeeded }: OperationWord, knowledge: Knowledge): Html => {
  const from = (limits: Readonly<Record<string, number>> = {}): readonly Html[] => Object.entries(limits).map(([fact, least]) => html`${factLink(fact, knowledge)} from ${valueText(least, knowledge.facts[fact], knowledge)}`);
  const at = (values: Readonly<Record<string, readonly string[]>> = {}): readonly Html[] => Object.entries(values).map(([fact, some]) => html`${factLink(fact, knowledge)}: ${some.map((each) => valueText(each, undefined, knowledge)).join(' or ')}`);
  const row = (head: string, told: readonly Html[]): Html => (told.length === 0 ? html`` : html`<dt>${head}</dt><dd>${listed(told)}</dd>`);
  return html`<dl class="facts"><dt>at least</dt><dd>${strain.least}</dd>${row('light', [...from(strain.lightFrom), ...at(strain.lightFor)])}${row('hard', [...from(strain.hardFrom), ...at(strain.hardFor)])}${daysNeeded === undefined ? '' : html`<dt>needs after it</dt><dd>${daysNeeded.days} growing days</dd>`}</dl>`;
};

const parameterTable = (parameters: OperationForm['parameters'], knowledge: Knowledge): Html => {
  if (parameters.length === 0) return html`<p>None: it is asked as it is.</p>`;
  const facts = new Map(Object.values(knowledge.facts).flatMap((word) => (word.given === undefined ? [] : [[word.given, word]])));
  const rows = parameters.map(({ name, meaning, type, choices, bounds, assumed, ask }) => {
    const word = facts.get(`operation.${name}`);
    const values = choices?.join(', ') ?? (bounds === undefined ? type : `${bounds[0]} to ${bounds[1]}${word?.unit === undefined || word.unit === 'share' ? '' : ` ${word.unit}`}`);
    return html`<tr><th scope="row"><code>${name}</code></th><td>${word === undefined ? meaning : link(`facts/${word.id}.html`, meaning)}</td><td>${values}</td><td>${assumed !== undefined ? valueText(assumed, word, knowledge) : ask !== undefined ? 'asked for' : 'unknown'}</td></tr>`;
  });
  return html`<div class="wide"><table><thead><tr><th scope="col">name</th><th scope="col">meaning</th><th scope="col">values</th><th scope="col">where it is not told</th></tr></thead><tbody>${rows}</tbody></table></div>`;
};

/** A page of one operation: how to ask about it, what it asks of the tree, which rules judge it, what is said for safety, and what follows. */
export const operationPage = ({ op, label, parameters }: OperationForm, knowledge: Knowledge): Page => {
  const word = knowledge.operations[op]!;
  const aliases = Object.entries(word.aliases);
  const rules = naming(knowledge.rules, op);
  const followUps = naming(knowledge.followUps, op);
  return {
    path: `operations/${op}.html`, title: label, section: 'operations', description: `${label}: its parameters, and the rules that judge it.`, words: `${op} ${aliases.map(([alias]) => alias).join(' ')}`,
    body: html`
<p class="chain">${link('operations/index.html', 'operations')} › ${op}</p>
<h1>${label}</h1>
${aliases.length === 0 ? '' : html`<p>Also asked as ${listed(aliases.map(([alias, set]) => html`${alias}${Object.keys(set).length === 0 ? '' : html` <small>(${setText(set, knowledge)})</small>`}`))}.</p>`}
<h2>Parameters</h2>
${parameterTable(parameters, knowledge)}
<h2>What it asks of the tree</h2>
${strainRows(word, knowledge)}
<h2>Rules that name it</h2>
${ruleItems(rules.filter(({ operations }) => operations !== 'all'))}
<h2>Rules of every operation</h2>
${ruleItems(rules.filter(({ operations }) => operations === 'all'))}
${word.instead.length === 0 ? '' : html`<h2>What may serve instead</h2><ul>${word.instead.map((each) => html`<li>${link(`operations/${each.op}.html`, knowledge.operations[each.op]!.label)}${Object.keys(each.set).length === 0 ? '' : `, ${setText(each.set, knowledge)}`}</li>`)}</ul>`}
${followUps.length === 0 ? '' : html`<h2>What follows</h2><ul>${followUps.map((each) => html`<li>After ${daysText(each, knowledge)}: ${knowledge.wording[`after.${each.id}`]!.replace('{days} ', '')}${where(each.when, knowledge)}</li>`)}</ul>`}
<h2>Cautions</h2>
<ul>${naming(knowledge.cautions, op).map((each) => html`<li>${knowledge.wording[`caution.${each.id}`]}${where(each.when, knowledge)}</li>`)}</ul>`,
  };
};

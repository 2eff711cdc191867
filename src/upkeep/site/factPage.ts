import type { FactWord, Knowledge, Rule } from '../../knowledge/knowledge.js';
import { capital } from './capital.js';
import { factLink } from './factLink.js';
import { html, type Html } from './html.js';
import { listed } from './listed.js';
import { link, type Page } from './page.js';
import { valueText } from './valueText.js';

/** The rules that look at each fact, in `when` or `unless`, or as a limit. */
export const rulesByFact = ({ rules, facts }: Knowledge): ReadonlyMap<string, readonly Rule[]> => {
  const by = new Map<string, Rule[]>();
  for (const rule of Object.values(rules)) {
    const written = JSON.stringify([rule.when, rule.unless]);
    for (const id of Object.keys(facts)) if (written.includes(`"${id}"`) || (id.startsWith('species.') && written.includes(`"trait":"${id.slice('species.'.length)}"`))) by.set(id, [...(by.get(id) ?? []), rule]);
  }
  return by;
};

/** A page of one fact or trait. */
export const factPage = (fact: FactWord, rules: readonly Rule[], knowledge: Knowledge): Page => {
  const { id, type, unit, values, bounds, meaning, given, assume, ask, label, from, worse } = fact;
  const { wording, operations } = knowledge;
  const row = (head: string, told: Html | string | undefined): readonly Html[] => (told === undefined ? [] : [html`<dt>${head}</dt><dd>${told}</dd>`]);
  const taking = given?.startsWith('operation.') === true ? Object.values(operations).filter(({ parameters }) => parameters.includes(given.slice('operation.'.length))) : [];
  const worst = worse === undefined ? undefined : values === undefined ? `the ${worse === 'high' ? 'higher' : 'lower'}` : `the ${worse === 'high' ? 'later' : 'earlier'} of its values`;
  return {
    path: `facts/${id}.html`, title: id, section: 'facts', description: `${id}: ${meaning}`, words: `${label ?? ''} ${meaning}`,
    body: html`
<p class="chain">${link('facts/index.html', 'facts')} › ${id.startsWith('species.') ? 'trait of a species' : 'fact of a proposal'}</p>
<h1><code>${id}</code></h1>
<p>${capital(meaning)}.</p>
<dl class="facts">
${row('type', type)}${row('unit', unit === 'share' ? 'share, from 0 to 1' : unit)}${row('values', values?.join(', '))}${row('bounds', bounds === undefined ? undefined : `${bounds[0]} to ${bounds[1]}`)}
${row('worse', worst)}${row('told as', given)}${row('told of', taking.length === 0 ? undefined : listed(taking.map((each) => link(`operations/${each.id}.html`, each.label))))}${row('worked out of', from === undefined ? undefined : listed(from.map((each) => factLink(each, knowledge))))}${row('where it is not told', assume === undefined ? undefined : Object.entries(assume).map(([operation, value]) => `${operation === 'default' ? '' : `${operations[operation]?.label ?? operation}: `}${valueText(value, fact, knowledge)}`).join('; '))}${row('asked as', ask === undefined ? undefined : (wording[`ask.${ask}`] ?? ask))}
</dl>
<h2>Rules that look at it</h2>
${rules.length === 0 ? html`<p>None: it shapes expectations, or other facts.</p>` : html`<ul>${rules.map((rule) => html`<li>${link(`rules/${rule.id}.html`, rule.title)} <small>${rule.id}</small></li>`)}</ul>`}`,
  };
};

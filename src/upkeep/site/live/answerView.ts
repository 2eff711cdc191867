/// <reference lib="dom" />
import type { Assessment, Knowledge } from 'sparebud';
import { capital } from '../capital.js';
import { factLabel } from '../factLabel.js';
import { valueText } from '../valueText.js';
import { answerChoices, type Press } from './answerChoices.js';
import { el } from './el.js';
import { verdictMark } from './verdictMark.js';

const section = (title: string, ...within: readonly Node[]): HTMLElement => el('section', {}, el('h2', {}, title), ...within);
const listed = (items: readonly (Node | string)[]): HTMLElement => el('ul', {}, ...items.map((item) => el('li', {}, item)));

/** A text whose days are not broken at the end of a line. */
const dated = (text: string): readonly (Node | string)[] => text.split(/(\d{4}-\d\d-\d\d)/).map((part, i) => (i % 2 === 1 ? el('time', {}, part) : part));

const mildness: Readonly<Record<Assessment['verdict'], number>> = { allowed: 0, risky: 1, 'advise-against': 2 };

const sourceText = ({ title, author, year, from }: Assessment['findings'][number]['sources'][number]): string =>
  `${[author, title.replace(/^\[(.*)\]$/, '$1'), year].filter((part) => part !== undefined).join(', ')}${from === 'memory' ? ' (recalled)' : ''}`;

const findingView = ({ rule, verdict, fires, title, because, costs, strength, sources }: Assessment['findings'][number], { wording }: Knowledge): HTMLElement =>
  el('li', { class: `finding ${verdict}` },
    el('h3', {}, verdictMark(verdict), ` ${title.text}${fires === 'possibly' ? '?' : ''}`),
    el('p', {}, because.text),
    el('p', { class: 'more' }, `${capital(wording[`costs.${costs}`] ?? costs)}; ${strength} evidence. `, el('a', { href: `../rules/${rule}.html` }, 'The rule')),
    el('details', {}, el('summary', { 'data-key': `sources ${rule}` }, sources.length === 1 ? 'Its source' : `Its ${sources.length} sources`), listed(sources.map(sourceText))));

/** Where a question is answered that no press of a button answers: the field of its own in the form. */
const fieldFor: Readonly<Record<string, string>> = { date: 'at-date', where: 'at-where-place', 'tree.lastRepotted': 'at-tree-lastRepotted' };

const toField = (fact: string, knowledge: Knowledge): readonly Node[] => {
  const id = fieldFor[knowledge.facts[fact]?.given ?? ''];
  if (id === undefined) return [];
  const button = el('button', { type: 'button', 'data-key': `tell ${fact}` }, 'Tell it in the form');
  button.addEventListener('click', () => {
    const field = document.getElementById(id);
    field?.closest('details')?.setAttribute('open', '');
    field?.focus();
  });
  return [el('p', {}, button)];
};

/**
 * An answer after its verdict: why, what it depends on, what would change it, when, and what to mind.
 *
 * @param press applies a patch to the question
 */
export const answerView = (answer: Assessment, knowledge: Knowledge, press: Press): readonly HTMLElement[] => {
  const { findings, questions, assumed, changes, windows, alternatives, after, cautions, notices, basis } = answer;
  const pressed = (key: string, text: string, verdict: Assessment['verdict'], patch: Parameters<Press>[0]): HTMLElement => {
    const button = el('button', { type: 'button', 'data-key': key }, el('span', {}, ...dated(text)), verdictMark(verdict));
    button.addEventListener('click', () => { press(patch); });
    return el('li', {}, button);
  };
  const fact = (id: string): string => { const word = knowledge.facts[id]; return word === undefined ? id : capital(factLabel(word)); };
  /* A window begins on a day that a change names too. */
  const days = new Set(windows.map(({ from }) => from));
  const ways = [
    ...changes.filter(({ patch }) => !days.has(String(patch['date']))).map(({ patch, why, verdict }) => ({ key: JSON.stringify(patch), text: why.text, verdict, patch: patch as Parameters<Press>[0] })),
    ...windows.map(({ from, to, verdict }) => ({ key: `window ${from}`, text: `from ${from} to ${to}`, verdict, patch: { date: from } })),
  ].sort((a, b) => mildness[a.verdict] - mildness[b.verdict]);
  return [
    ...(findings.length === 0 ? [] : [section('Why', el('ul', { class: 'findings' }, ...findings.map((each) => findingView(each, knowledge))))]),
    ...(questions.length === 0 ? [] : [section('What it depends on', el('ul', { class: 'asked' }, ...questions.map((each) => el('li', {}, el('h3', {}, each.ask.text), answerChoices(each.fact, each.answers, knowledge, press), ...toField(each.fact, knowledge)))))]),
    ...(ways.length === 0 ? [] : [section('What would change it', el('ul', { class: 'choices' }, ...ways.map(({ key, text, verdict, patch }) => pressed(key, text, verdict, patch))))]),
    ...(alternatives.length === 0 ? [] : [section('Another way', el('ul', { class: 'choices' }, ...alternatives.map(({ operation, why, verdict }) => pressed(JSON.stringify(operation), why.text, verdict, { operation: { ...Object.fromEntries(Object.keys(answer.proposal['operation'] as object).map((name) => [name, null])), ...operation } }))))]),
    ...(assumed.length === 0 ? [] : [section('Taken for granted', el('ul', { class: 'asked' }, ...assumed.map((each) =>
      el('li', {}, el('h3', {}, fact(each.fact), ': ', each.value === null ? 'not known' : valueText(each.value, knowledge.facts[each.fact], knowledge)), el('p', { class: 'more' }, 'Otherwise:'), answerChoices(each.fact, each.otherwise as Parameters<typeof answerChoices>[1], knowledge, press), ...toField(each.fact, knowledge)))))]),
    ...(after.length === 0 ? [] : [section('Afterwards', listed(after.map(({ do: todo, from, to }) => el('span', {}, ...dated(`${from === undefined ? '' : `${from}${to === undefined || to === from ? '' : ` to ${to}`}: `}${capital(todo.text)}`)))))]),
    section('Take care', listed([...cautions.map(({ text }) => text), ...notices.map(({ text }) => text)])),
    el('p', { class: 'more' }, `Stands on: ${[basis.where?.text, basis.phase === undefined ? undefined : knowledge.phases[basis.phase]?.label, `traits of the ${basis.traitsFrom}`, `knowledge ${basis.knowledge}`].filter((part) => part !== undefined).join('; ')}.`),
  ];
};

/// <reference lib="dom" />
import { createAdvisor, type Issue, mergePatch, type OperationForm, type Proposal, SparebudError, type Value } from 'sparebud';
import { knowledge } from 'sparebud/knowledge';
import { yearPicture } from 'sparebud/picture';
import { places } from 'sparebud/places';
import { answerView } from './answerView.js';
import { atPath, patchAt } from './atPath.js';
import { capital } from '../capital.js';
import { workGroups } from '../workGroups.js';
import { el } from './el.js';
import { examples } from './examples.js';
import { type Field, operationFields, treeFields, whereFields } from './fields.js';
import { type FieldView, fieldView } from './fieldView.js';
import { decodeLink, encodeLink } from './linkCoding.js';
import { picture, wordingOf } from './picture.js';
import { speciesNames } from './speciesNames.js';
import { treeView } from './treeView.js';
import { verdictMark, verdictWords } from './verdictMark.js';
import { type Question, withoutEmpty } from './withoutEmpty.js';

/* The live page: the question stands in the link, the form shows it, and each change is answered anew. */
const advisor = createAdvisor(knowledge, { places });
const forms = new Map(advisor.operations().map((form): [string, OperationForm] => [form.op, form]));
const part = (id: string): HTMLElement => document.getElementById(id)!;

const narrow = (): boolean => matchMedia('(max-width: 48rem)').matches;

const today = (): string => {
  const now = new Date();
  return [now.getFullYear(), String(now.getMonth() + 1).padStart(2, '0'), String(now.getDate()).padStart(2, '0')].join('-');
};

let question: Question = {};
let asked = 0;
let views: readonly FieldView[] = [];
let parameters: readonly FieldView[] = [];
let shownOperation: unknown;

const placeId = (named: string): string => places.find(({ id, name, country }) => named === `${name}, ${country}` || named === id)?.id ?? named;
const placeName = (id: unknown): unknown => { const place = places.find((each) => each.id === id); return place === undefined ? id : `${place.name}, ${place.country}`; };

const told = (path: string, value: unknown): void => { change(patchAt(path, path === 'where.place' && typeof value === 'string' ? placeId(value) : value)); };

const change = (patch: Question): void => {
  question = withoutEmpty(mergePatch(question, patch) as Question);
  history.replaceState(null, '', `#${encodeLink(question)}`);
  part('link-fault').textContent = '';
  void answer();
};

const showForm = (): void => {
  const op = atPath(question, 'operation.op');
  if (op !== shownOperation) {
    const form = forms.get(String(op));
    parameters = form === undefined ? [] : operationFields(form).map((field) => fieldView(field, knowledge, told));
    part('parameters').replaceChildren(...parameters.map(({ whole }) => whole));
    shownOperation = op;
  }
  for (const view of [...views, ...parameters]) {
    const value = atPath(question, view.path);
    view.show(view.path === 'where.place' ? placeName(value) : value);
  }
  part('own-link').setAttribute('href', `#${encodeLink(question)}`);
};

/** Names that may be meant in a field, each to press. */
const offer = (list: string, path: 'tree.species' | 'where.place', names: readonly string[]): void => {
  part(list).replaceChildren(...names.map((name) => {
    const button = el('button', { type: 'button' }, path === 'where.place' ? String(placeName(name)) : name);
    button.addEventListener('click', () => {
      part(`at-${path.replace('.', '-')}`).focus();
      change(patchAt(path, name));
    });
    return el('li', {}, button);
  }));
};

const showFaults = (issues: readonly Issue[]): void => {
  const shown = new Set<Issue>();
  for (const view of [...views, ...parameters]) {
    const own = issues.filter(({ path }) => path === view.path);
    for (const issue of own) shown.add(issue);
    view.fault(own);
  }
  part('faults').replaceChildren(...issues.filter((issue) => !shown.has(issue)).map(({ path, message, help }) => el('li', {}, capital([message, help].filter((text) => text !== undefined).join('; ')), ` (${path})`)));
  const unknown = issues.find(({ path }) => path === 'tree.species');
  const found = unknown === undefined ? undefined : advisor.findSpecies(String(atPath(question, 'tree.species')));
  offer('near', 'tree.species', found?.kind === 'ambiguous' ? found.species.map(({ name }) => name) : found?.kind === 'unknown' ? found.near : []);
  offer('near-places', 'where.place', issues.find(({ path }) => path === 'where.place')?.accepted ?? []);
};

/** Puts an answer in the place of the last; what had the focus has it still, or the verdict has it. */
const showAnswer = (within: readonly HTMLElement[]): void => {
  const place = part('answer');
  const focused = document.activeElement;
  const key = focused instanceof HTMLElement && place.contains(focused) ? (focused.dataset['key'] ?? '') : undefined;
  const open = new Set([...place.querySelectorAll('details[open] > summary')].map((summary) => (summary as HTMLElement).dataset['key']));
  place.replaceChildren(...within);
  for (const summary of place.querySelectorAll<HTMLElement>('summary')) if (open.has(summary.dataset['key'])) summary.parentElement!.setAttribute('open', '');
  if (key === undefined) return;
  ([...place.querySelectorAll<HTMLElement>('[data-key]')].find((each) => each.dataset['key'] === key) ?? part('verdict')).focus();
};

/** Says the verdict above the answer; and on a narrow page, where the answer is far below the form, at its foot. */
const say = (className: string, ...text: readonly (Node | string)[]): void => {
  part('verdict').className = className;
  part('verdict').replaceChildren(...text);
  const foot = part('to-answer');
  foot.hidden = className === '';
  foot.className = className;
  foot.replaceChildren(...(text[0] instanceof Node ? [text[0].cloneNode(true), ': see why'] : ['What is wrong']));
};

const showYear = async (at: number): Promise<void> => {
  const { tree, where, date } = question as unknown as Proposal;
  const operation = question['operation'] as Readonly<Record<string, Value>>;
  const place = part('year');
  if (date === undefined) {
    place.replaceChildren();
    return;
  }
  const year = await advisor.year({ tree, operations: [operation], from: `${date.slice(0, 4)}-01-01`, ...(where === undefined ? {} : { where }) });
  if (at !== asked) return;
  /* Where no place is told, each day of the year would look the same. */
  if (year.phases.length === 0) place.replaceChildren();
  else place.replaceChildren(el('h2', {}, 'Its year'), picture(yearPicture(year, wordingOf(knowledge), narrow() ? 340 : 800), 'Picture of the year'));
};

const answer = async (): Promise<void> => {
  const at = ++asked;
  showForm();
  const missing = [...(atPath(question, 'tree.species') === undefined ? ['the species'] : []), ...(atPath(question, 'operation.op') === undefined ? ['the work'] : [])];
  if (missing.length > 0) {
    showFaults([]);
    say('', `Tell ${missing.join(' and ')}, and the answer stands here.`);
    showAnswer(missing.length < 2 ? [] : [el('p', {}, 'Or begin with one of these:'), el('ul', { class: 'choices' }, ...examples.map(({ label, asked: example }) => {
      const button = el('button', { type: 'button' }, label);
      button.addEventListener('click', () => { change(example); });
      return el('li', {}, button);
    }))]);
    part('year').replaceChildren();
    return;
  }
  try {
    const given = await advisor.assess(question);
    if (at !== asked) return;
    showFaults([]);
    const open = given.settled ? '' : ` Not settled: from ${given.range.map((each) => verdictWords[each]).join(' to ')}.`;
    say(`box ${given.verdict}`, verdictMark(given.verdict), el('span', { class: 'summary' }, `${given.summary.text}${open}`));
    showAnswer(answerView(given, knowledge, change));
    document.documentElement.dataset['answeredMs'] ??= String(performance.now());
    await showYear(at);
  } catch (cause) {
    if (!(cause instanceof SparebudError)) throw cause;
    if (at !== asked) return;
    showFaults(cause.issues);
    say('box fault', cause.issues.length === 1 ? 'No answer yet: one thing cannot be understood.' : `No answer yet: ${cause.issues.length} things cannot be understood.`);
    showAnswer([]);
    part('year').replaceChildren();
  }
};

const openLink = async (first: boolean): Promise<void> => {
  const fragment = location.hash.slice(1);
  const decoded = decodeLink(fragment);
  if (decoded.kind === 'fault') part('link-fault').textContent = `The link cannot be read: ${decoded.why}. ${first ? 'The question begins empty.' : 'The question stays as it was.'}`;
  else {
    part('link-fault').textContent = '';
    question = decoded.question;
  }
  if (first && (decoded.kind === 'fault' || fragment === '')) question = { date: today() };
  await answer();
};

const operationField: Field = { path: 'operation.op', label: 'work', meaning: '', type: 'choice' };
const operationView = (): FieldView => {
  const view = fieldView(operationField, knowledge, (_, op) => { change({ operation: { ...Object.fromEntries(Object.keys((question['operation'] ?? {}) as object).map((name) => [name, null])), op } }); });
  view.input.append(...workGroups(advisor.operations()).map(([name, within]) => el('optgroup', { label: name }, ...within.map(({ op, label }) => el('option', { value: op }, label)))));
  return view;
};

/** What may be typed: names by the thousand, which the first answer does not wait for. */
const suggest = (): void => {
  part('lists').append(
    el('datalist', { id: 'species-names' }, ...speciesNames(knowledge).map(({ name, of }) => el('option', { value: name }, of))),
    el('datalist', { id: 'places' }, ...places.map(({ name, country }) => el('option', { value: `${name}, ${country}` }))),
  );
};

const build = (): void => {
  const species = fieldView({ path: 'tree.species', label: 'species', meaning: 'a botanical or a common name', type: 'text', list: 'species-names' }, knowledge, told);
  const work = operationView();
  const date = fieldView({ path: 'date', label: 'day', meaning: '', type: 'date' }, knowledge, told);
  const where = whereFields.map((field) => fieldView(field, knowledge, told));
  const tree = treeFields(knowledge).map((field) => fieldView(field, knowledge, told));
  views = [species, work, date, ...where, ...tree];
  const put = (id: string, made: readonly FieldView[]): void => { part(id).append(...made.map(({ whole }) => whole)); };
  put('species', [species]);
  put('work', [work]);
  put('when', [date, where[0]!]);
  put('frost', where.slice(1));
  put('tree', tree);
  part('ask').addEventListener('submit', (event) => { event.preventDefault(); });
  part('to-answer').addEventListener('click', () => {
    part('verdict').focus();
    part('verdict').scrollIntoView();
  });
  part('anew').addEventListener('click', () => {
    question = { date: today() };
    change({});
    part('at-tree-species').focus();
  });
};

const showTree = async (): Promise<void> => {
  const place = part('sample');
  place.replaceChildren(...(await treeView(advisor, (await (await fetch('sample.json')).json()) as never)));
};

build();
/* Where there is room for it, how the work is done stands open. */
part('how').toggleAttribute('open', matchMedia('(min-width: 64rem)').matches);
void openLink(true).finally(suggest);
addEventListener('hashchange', () => { void openLink(false); });
part('sample-tree').addEventListener('toggle', () => { void showTree(); }, { once: true });

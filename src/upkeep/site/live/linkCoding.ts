import { isMembers, type Question } from './withoutEmpty.js';

/** No question that a person asks is as long; browsers and mail carry this much. */
export const mostLetters = 8000;

const plainName = /^[A-Za-z][A-Za-z0-9]*$/;
/* What would be read as something else than the text that it is. */
const needsQuotes = /^(?:[[{"]|-?\d|true$|false$|null$)|^$|\p{Surrogate}/u;

const encoded = (text: string): string => encodeURIComponent(text).replaceAll('%20', '+').replaceAll('%3A', ':').replaceAll('%2C', ',');

/* A day such as 2027-03-01 or 04-20 begins like a number and is none. */
const isDay = /^(?:\d{4}-)?\d{2}-\d{2}$/;

const pairsOf = (value: unknown, path: string): readonly string[] => {
  if (isMembers(value) && Object.keys(value).length > 0 && Object.keys(value).every((name) => plainName.test(name))) {
    return Object.entries(value).flatMap(([name, of]) => pairsOf(of, path === '' ? name : `${path}.${name}`));
  }
  return [`${path}=${encoded(typeof value === 'string' && (isDay.test(value) || !needsQuotes.test(value)) ? value : JSON.stringify(value))}`];
};

/** A question as the fragment of a link, to be read by people too: `tree.species=Scots+pine&operation.op=repot`. */
export const encodeLink = (question: Question): string => (Object.keys(question).length === 0 ? '' : Object.entries(question).flatMap(([name, value]) => pairsOf(value, name)).join('&'));

export type Decoded = { readonly kind: 'question'; readonly question: Question } | { readonly kind: 'fault'; readonly why: string };

const fault = (why: string): Decoded => ({ kind: 'fault', why });

const valueOf = (text: string): unknown => (!isDay.test(text) && needsQuotes.test(text) ? JSON.parse(text) : text);

/** The question that a fragment carries, or why it carries none; it never throws. */
export const decodeLink = (fragment: string): Decoded => {
  if (fragment.length > mostLetters) return fault(`it is longer than ${mostLetters} letters`);
  const question = new Map<string, unknown>();
  for (const pair of fragment.split('&')) {
    if (pair === '') continue;
    const [path = '', ...rest] = pair.split('=');
    const names = path.split('.');
    if (rest.length === 0 || !names.every((name) => plainName.test(name))) return fault(`\`${pair.slice(0, 60)}\` names nothing that can be told`);
    let value: unknown;
    try {
      value = valueOf(decodeURIComponent(rest.join('=').replaceAll('+', ' ')));
    } catch {
      return fault(`what it says of \`${path}\` cannot be read`);
    }
    let into = question;
    for (const name of names.slice(0, -1)) {
      const there = into.get(name) ?? new Map<string, unknown>();
      if (!(there instanceof Map)) return fault(`it tells \`${path}\` twice`);
      into.set(name, there);
      into = there as Map<string, unknown>;
    }
    const last = names.at(-1)!;
    if (into.has(last)) return fault(`it tells \`${path}\` twice`);
    into.set(last, value);
  }
  return { kind: 'question', question: plain(question) };
};

const plain = (members: ReadonlyMap<string, unknown>): Question => Object.fromEntries([...members].map(([name, value]) => [name, value instanceof Map ? plain(value as ReadonlyMap<string, unknown>) : value]));

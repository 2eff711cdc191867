import type { Knowledge, WrittenCondition } from '../../knowledge/knowledge.js';
import { html, type Html } from './html.js';
import { link } from './page.js';

const operators: Readonly<Record<string, string>> = { above: 'above', below: 'below', atLeast: 'at least', atMost: 'at most', is: '', not: 'not', in: 'one of', has: 'has', lacks: 'lacks' };

const limitText = (limit: unknown): string => {
  if (Array.isArray(limit)) return limit.map(String).join(' or ');
  if (typeof limit !== 'object' || limit === null) return String(limit);
  const { trait, times, plus, operation, ...rest } = limit as Readonly<Record<string, unknown>>;
  if (typeof trait === 'string') return `${times === undefined || times === 1 ? '' : `${String(times)} times `}the species' ${trait}${plus === undefined ? '' : ` and ${String(plus)}`}`;
  if (typeof operation === 'string') return `the ${operation} of the operation`;
  return Object.entries(rest).map(([operator, value]) => (operator === 'between' && Array.isArray(value) ? `between ${String(value[0])} and ${String(value[1])}` : `${operators[operator] ?? operator} ${limitText(value)}`.trim())).join(' and ');
};

/** What a condition asks, in words, each fact with a link to its page. */
export const conditionText = (condition: WrittenCondition, { facts }: Knowledge): Html => {
  const tests = Object.entries(condition).map(([fact, limit]): Html => {
    if (fact === 'any' || fact === 'all') return html`${fact} of these: <ul>${(limit as readonly WrittenCondition[]).map((each) => html`<li>${conditionText(each, { facts } as Knowledge)}</li>`)}</ul>`;
    const word = facts[fact];
    return html`${word === undefined ? fact : link(`facts/${fact}.html`, word.label ?? word.meaning)} <span class="limit">${limitText(limit)}${word?.unit === undefined || typeof limit !== 'object' ? '' : ` ${word.unit === 'share' ? '(share)' : word.unit}`}</span>`;
  });
  return html`${tests.flatMap((test, i) => (i === 0 ? [test] : [html`, and `, test]))}`;
};

import type { Message } from '../contract/types.generated.js';
import { longAgo } from '../facts/longAgo.js';
import type { FactWord, Knowledge, Value } from '../knowledge/knowledge.js';

export type Params = Readonly<Record<string, string | number | boolean>>;

/** Stands for a number that is not known. */
export const notKnown = '…';

/** The names of the parameters that a text takes. */
export const paramsIn = (text: string): readonly string[] => [...text.matchAll(/\{([^}]+)\}/g)].map((match) => match[1]!);

/** A text with its parameters put in. What stands in brackets with a number that is not known is left out. */
const fill = (text: string, params: Params): string => {
  const shown = (name: string): string => String(params[name] ?? notKnown);
  return text
    .replace(/ \([^()]*\)/g, (aside) => (paramsIn(aside).some((name) => shown(name) === notKnown) ? '' : aside))
    .replace(/(^|[.:?!] )?\{([^}]+)\}/g, (_, before: string | undefined, name: string) => (before === undefined ? shown(name) : before + shown(name).charAt(0).toUpperCase() + shown(name).slice(1)));
};

/** A message whose text stands in a rule. */
export const ruleMessage = (id: string, text: string, params: Params = {}): Message => ({ id, params: { ...params }, text: fill(text, params) });

/** A message of the wording, with its parameters filled in. */
export const message = (knowledge: Knowledge, id: string, params?: Params): Message => ruleMessage(id, knowledge.wording[id] ?? id, params);

/** A word that is one of several values, as a text says it: in plain letters where the wording has no other for it. */
export const wordFor = (value: string, { wording }: Pick<Knowledge, 'wording'>): string => wording[`value.${value}`] ?? value.replaceAll('-', ' ');

/** A value as a person reads it: shares in per cent, numbers without false exactness. */
export const shownValue = (value: Value, word: FactWord | undefined, knowledge: Knowledge): string | number | boolean => {
  if (typeof value === 'number') {
    if (word?.unit === 'days' && value >= longAgo) return wordFor('long-ago', knowledge);
    if (word?.unit === 'share') return `${Math.round(value * 100)} %`;
    return Math.abs(value) >= 20 || word?.unit === 'days' ? Math.round(value) : Math.round(value * 10) / 10;
  }
  if (typeof value === 'object') return value.map((each) => wordFor(each, knowledge)).join(', ');
  return value;
};

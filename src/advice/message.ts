import type { Message } from '../contract/types.generated.js';
import { longAgo } from '../facts/history.js';
import type { FactWord, Knowledge, Value } from '../knowledge/knowledge.js';

export type Params = Readonly<Record<string, string | number | boolean>>;

const fill = (text: string, params: Params): string =>
  text.replace(/(^|[.:?!] )?\{([^}]+)\}/g, (_, before: string | undefined, name: string) => {
    const value = String(params[name] ?? '…');
    return before === undefined ? value : before + value.charAt(0).toUpperCase() + value.slice(1);
  });

/** A message whose text stands in a rule. */
export const ruleMessage = (id: string, text: string, params: Params = {}): Message => ({ id, params: { ...params }, text: fill(text, params) });

/** A message of the wording, with its parameters filled in. */
export const message = (knowledge: Knowledge, id: string, params?: Params): Message => ruleMessage(id, knowledge.wording[id] ?? id, params);

/** The names of the parameters that a text takes. */
export const paramsIn = (text: string): readonly string[] => [...text.matchAll(/\{([^}]+)\}/g)].map((match) => match[1]!);

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

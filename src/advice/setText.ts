import type { Knowledge, Value } from '../knowledge/knowledge.js';
import { message, shownValue, wordFor } from './message.js';

/** What values of parameters mean, in the words of the trade. */
export const setText = (set: Readonly<Record<string, Value>>, knowledge: Knowledge): string =>
  Object.entries(set).map(([name, value]) => {
    const own = `set.${name}.${String(value)}`;
    if (Object.hasOwn(knowledge.wording, own)) return knowledge.wording[own]!;
    const word = Object.values(knowledge.facts).find((fact) => fact.given === `operation.${name}`);
    return message(knowledge, `set.${name}`, { value: typeof value === 'string' ? wordFor(value, knowledge) : String(shownValue(value, word, knowledge)) }).text;
  }).join(', ');

import { wordFor } from '../../advice/message.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { operationForms } from '../../knowledge/operationForms.js';
import { withTexts } from '../../knowledge/withTexts.js';

/** Words that stand for a value that no fact has. */
const further = ['long-ago', 'never'];

/** Every text that a person may read in an answer or a form, by its id and in order of id: what another language has to say. */
export const englishWording = (knowledge: Knowledge): Readonly<Record<string, string>> => {
  const texts = new Map(Object.entries(knowledge.wording));
  withTexts(knowledge, (id, own) => {
    if (own !== undefined) texts.set(id, own);
    return own;
  });
  /* A parameter without a label is called as it is written. */
  const factOf = new Map(Object.values(knowledge.facts).map(({ id, given }) => [given, id]));
  for (const { name, label } of operationForms(knowledge).flatMap(({ parameters }) => parameters)) texts.set(`fact.${factOf.get(`operation.${name}`) ?? name}.label`, label);
  for (const [id, { label }] of Object.entries(knowledge.aims.styles ?? {})) texts.set(`style.${id}`, label);
  for (const { id, rank, name } of Object.values(knowledge.species)) if (rank === 'group') texts.set(`species.${id}`, name);
  for (const value of [...Object.values(knowledge.facts).flatMap(({ values }) => values ?? []), ...further]) texts.set(`value.${value}`, wordFor(value, knowledge));
  return Object.fromEntries([...texts].sort(([a], [b]) => (a < b ? -1 : 1)));
};

import { isMap, isScalar, parseDocument } from 'yaml';
import type { Parts } from '../../knowledge/parts.js';
import { redundantTraits } from '../house/redundantTraits.js';
import { houseText } from './houseText.js';
import { inOrder, mapAt } from './inOrder.js';

const fields = ['name', 'author', 'parent', 'commonNames', 'synonyms', 'asParent', 'traits', 'members'];
const traitFields = ['is', 'either', 'source', 'sources', 'note'];

/** A species file in the house's order and format, without traits that only repeat the parent. */
export const mendSpecies = (id: string, text: string, parts: Parts): string => {
  const document = parseDocument(text);
  if (document.errors.length > 0 || !isMap(document.contents)) return text;
  inOrder(document.contents, fields);
  const traits = mapAt(document, ['traits']);
  if (traits !== undefined) {
    for (const trait of Object.keys(redundantTraits(id, parts))) traits.delete(trait);
    inOrder(traits, Object.keys(parts.facts).filter((fact) => fact.startsWith('species.')).map((fact) => fact.slice('species.'.length)));
    for (const { key, value } of traits.items) {
      if (isMap(value)) inOrder(value, traitFields);
      if (isScalar(key)) key.spaceBefore = false;
    }
    if (traits.items.length === 0) document.delete('traits');
  }
  return houseText(document);
};

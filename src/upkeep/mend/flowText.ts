import { Document, visit } from 'yaml';
import { houseText } from './houseText.js';

/** A value on one line, as the house writes it. */
export const flowText = (value: unknown): string => {
  const document = new Document(value);
  visit(document, { Collection: (_, node) => { node.flow = true; } });
  return houseText(document).trim();
};

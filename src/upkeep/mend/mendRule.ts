import { isMap, isSeq, parseDocument } from 'yaml';
import { houseText } from './houseText.js';
import { inOrder } from './inOrder.js';

const fields = ['title', 'operations', 'verdict', 'costs', 'when', 'unless', 'because', 'instead', 'covers', 'reverses', 'note', 'sources', 'examples'];
const exampleFields = ['operation', 'given', 'fires', 'verdict'];
const reasonFields = ['when', 'because', 'sources'];

/** A rule file in the house's order and format. */
export const mendRule = (text: string): string => {
  const document = parseDocument(text);
  if (document.errors.length > 0 || !isMap(document.contents)) return text;
  inOrder(document.contents, fields);
  for (const [list, order] of [['unless', reasonFields], ['examples', exampleFields]] as const) {
    const entries = document.get(list);
    if (!isSeq(entries)) continue;
    for (const entry of entries.items) if (isMap(entry)) inOrder(entry, order);
  }
  return houseText(document);
};

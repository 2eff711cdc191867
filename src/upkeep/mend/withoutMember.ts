import { basename } from 'node:path';
import { parseDocument } from 'yaml';
import { houseText } from './houseText.js';
import { mapAt } from './inOrder.js';

/** The text of a genus or species file without a member that has a file of its own now. */
export const withoutMember = (text: string, path: string): string => {
  const document = parseDocument(text);
  document.deleteIn(['members', basename(path, '.yaml')]);
  if (mapAt(document, ['members'])?.items.length === 0) document.delete('members');
  return houseText(document);
};

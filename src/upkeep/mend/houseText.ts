import type { Document } from 'yaml';

/** Brackets stand close to what they hold; text in quotes and comments is left as it is. */
const unpadded = (text: string): string => text.replace(/"(?:[^"\\]|\\.)*"|'(?:[^']|'')*'|(?:^|\s)#.*$|\[ | \]/gm, (found) => (found === '[ ' ? '[' : found === ' ]' ? ']' : found));

/** A document as the house writes YAML: one entry a line however long, braces with a blank inside, brackets without. */
export const houseText = (document: Document): string => unpadded(document.toString({ lineWidth: 0, flowCollectionPadding: true }));

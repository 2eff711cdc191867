import { stripVTControlCharacters } from 'node:util';
import wrapAnsi from 'wrap-ansi';
import { inUnits } from './inUnits.js';
import type { Page } from './page.js';

/** Text behind a bullet or some blanks, in the page's units and wrapped to its width, later lines as far in as the first; colours take no room. */
export const hanging = (bullet: string, text: string, { width, units }: Page): string => {
  const indent = stripVTControlCharacters(bullet).length;
  return wrapAnsi(inUnits(text, units), Math.max(30, width - indent), { hard: false, trim: true }).split('\n').map((line, i) => (i === 0 ? bullet : ' '.repeat(indent)) + line).join('\n');
};

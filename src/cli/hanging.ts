import { stripVTControlCharacters } from 'node:util';
import wrapAnsi from 'wrap-ansi';

/** Text behind a bullet or some blanks, wrapped to the terminal's width, later lines as far in as the first; colours take no room. */
export const hanging = (bullet: string, text: string, width: number): string => {
  const indent = stripVTControlCharacters(bullet).length;
  return wrapAnsi(text, Math.max(30, width - indent), { hard: false, trim: true }).split('\n').map((line, i) => (i === 0 ? bullet : ' '.repeat(indent)) + line).join('\n');
};

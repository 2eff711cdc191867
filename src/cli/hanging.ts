import wrapAnsi from 'wrap-ansi';

/** Text behind a bullet or some blanks, wrapped to the terminal's width, later lines as far in as the first. */
export const hanging = (bullet: string, text: string, width: number): string =>
  wrapAnsi(text, Math.max(30, width - bullet.length), { hard: false, trim: true }).split('\n').map((line, i) => (i === 0 ? bullet : ' '.repeat(bullet.length)) + line).join('\n');

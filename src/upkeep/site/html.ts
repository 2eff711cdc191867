/** Text that is HTML already. */
export interface Html {
  readonly html: string;
}

type Part = Html | string | number | undefined | readonly (Html | string | number | undefined)[];

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;', "'": '&#39;' };

export const escaped = (text: string): string => text.replace(/[&<>"']/g, (letter) => escapes[letter]!);

const written = (part: Part): string => {
  if (part === undefined) return '';
  if (typeof part === 'string') return escaped(part);
  if (typeof part === 'number') return String(part);
  return 'html' in part ? part.html : part.map(written).join('');
};

/** A template whose parts are escaped, unless they are HTML of this tag themselves. */
export const html = (texts: TemplateStringsArray, ...parts: readonly Part[]): Html => ({ html: texts.map((text, i) => text + (i < parts.length ? written(parts[i]) : '')).join('') });

/** HTML that another library made. */
export const raw = (made: string): Html => ({ html: made });

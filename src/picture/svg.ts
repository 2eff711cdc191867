/** Text that may stand in XML. */
export const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;').replace(/>/g, '&gt;').replace(/"/g, '&quot;');

/** One SVG element as text; the content is taken as it is. */
export const element = (name: string, attributes: Readonly<Record<string, string | number>>, content = ''): string => {
  const written = Object.entries(attributes).map(([key, value]) => ` ${key}="${escaped(String(value))}"`).join('');
  return content === '' ? `<${name}${written}/>` : `<${name}${written}>${content}</${name}>`;
};

/** A line of text; with a longer text of its own where it had to be cut short. */
export const textAt = (x: number, y: number, text: string, attributes: Readonly<Record<string, string | number>>, whole?: string): string =>
  element('text', { x, y, ...attributes }, (whole === undefined || whole === text ? '' : element('title', {}, escaped(whole))) + escaped(text));

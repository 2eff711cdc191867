/** An element of XML as it was read. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Element[];
  text: string;
}

const entity = /&(?:amp|lt|gt|quot|apos|#\d+|#x[\da-f]+);/gi;
const unescaped = (text: string): string => text.replace(/&lt;/g, '<').replace(/&gt;/g, '>').replace(/&quot;/g, '"').replace(/&amp;/g, '&');

/** A strict reading of a small part of XML: one root, every tag closed in order, attributes quoted and each once, no bare `&` or `<`. Throws on anything else. */
export const readXml = (xml: string): Element => {
  const bare = (text: string): void => { if (/[&<>]/.test(text.replace(entity, ''))) throw new Error(`bare character in \`${text.slice(0, 80)}\``); };
  const holder: Element = { name: '', attributes: {}, children: [], text: '' };
  const open: Element[] = [holder];
  let at = 0;
  while (at < xml.length) {
    const next = xml.indexOf('<', at);
    const text = xml.slice(at, next < 0 ? xml.length : next);
    bare(text);
    open.at(-1)!.text += unescaped(text);
    if (open.length === 1 && text.trim() !== '') throw new Error(`text outside of the root: \`${text}\``);
    if (next < 0) break;
    const tag = /^<(?:\/([A-Za-z][\w-]*)|([A-Za-z][\w-]*)((?:\s+[A-Za-z_][\w:-]*="[^"<]*")*)\s*(\/?))>/.exec(xml.slice(next));
    if (tag === null) throw new Error(`no tag: \`${xml.slice(next, next + 60)}\``);
    const [whole, closes, opens, written = '', alone] = tag;
    if (closes !== undefined) {
      if (open.length < 2 || open.at(-1)!.name !== closes) throw new Error(`</${closes}> closes <${open.at(-1)!.name}>`);
      open.pop();
    } else {
      const attributes: Record<string, string> = {};
      for (const [, key, value] of written.matchAll(/([\w:-]+)="([^"]*)"/g)) {
        if (Object.hasOwn(attributes, key!)) throw new Error(`${key!} stands twice`);
        bare(value!);
        attributes[key!] = unescaped(value!);
      }
      const element: Element = { name: opens!, attributes, children: [], text: '' };
      open.at(-1)!.children.push(element);
      if (alone === '') open.push(element);
    }
    at = next + whole.length;
  }
  if (open.length !== 1 || holder.children.length !== 1) throw new Error('one root, and every tag closed');
  return holder.children[0]!;
};

/** An element and all within it. */
export const all = (element: Element): readonly Element[] => [element, ...element.children.flatMap(all)];
export const named = (element: Element, name: string): readonly Element[] => all(element).filter((one) => one.name === name);

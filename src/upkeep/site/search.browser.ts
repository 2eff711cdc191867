/// <reference lib="dom" />
import MiniSearch from 'minisearch';

/* The search of the site, in the browser: pages by their titles and words. */
interface Entry {
  readonly path: string;
  readonly title: string;
  readonly kind: string;
  readonly words: string;
}

const form = document.querySelector<HTMLFormElement>('form[role=search]')!;
const input = form.querySelector('input')!;
const list = document.querySelector<HTMLOListElement>('#found')!;
const up = form.dataset['up'] ?? '';

let looking: Promise<MiniSearch<Entry>> | undefined;
const index = async (): Promise<MiniSearch<Entry>> => {
  const entries = (await (await fetch(`${up}search.json`)).json()) as readonly Entry[];
  const search = new MiniSearch<Entry>({ idField: 'path', fields: ['title', 'words'], storeFields: ['title', 'kind'], searchOptions: { boost: { title: 3 }, prefix: true, fuzzy: 0.3, combineWith: 'AND' } });
  search.addAll(entries);
  return search;
};

/** A line of the list: a page that was found, or a word about why none is. */
const line = (text: string, to?: string, kind = ''): HTMLLIElement => {
  const item = document.createElement('li');
  if (to === undefined) {
    item.textContent = text;
    return item;
  }
  const anchor = document.createElement('a');
  anchor.href = up + to;
  anchor.textContent = text;
  const small = document.createElement('small');
  small.textContent = ` ${kind}`;
  item.append(anchor, small);
  return item;
};

const linesOf = async (asked: string): Promise<readonly HTMLLIElement[]> => {
  try {
    looking ??= index();
    const found = (await looking).search(asked).slice(0, 12);
    return found.length === 0 ? [line('Nothing is called so.')] : found.map((each) => line(String(each['title']), String(each.id), String(each['kind'])));
  } catch {
    /* Pages opened as files may not read other files. */
    looking = undefined;
    return [line('Search works where the pages come from a server.')];
  }
};

const show = async (): Promise<void> => {
  const asked = input.value.trim();
  const lines = asked === '' ? [] : await linesOf(asked);
  if (input.value.trim() !== asked) return;
  list.replaceChildren(...lines);
  list.hidden = lines.length === 0;
};

input.addEventListener('input', () => { void show(); });
form.addEventListener('submit', (event) => {
  event.preventDefault();
  list.querySelector('a')?.click();
});

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

const show = async (): Promise<void> => {
  const asked = input.value.trim();
  if (asked === '') {
    list.hidden = true;
    list.replaceChildren();
    return;
  }
  looking ??= index();
  const found = (await looking).search(asked).slice(0, 12);
  if (input.value.trim() !== asked) return;
  list.replaceChildren(...(found.length === 0 ? [document.createElement('li')] : found.map((each) => {
    const item = document.createElement('li');
    const anchor = document.createElement('a');
    anchor.href = up + String(each.id);
    anchor.textContent = String(each['title']);
    const kind = document.createElement('small');
    kind.textContent = ` ${String(each['kind'])}`;
    item.append(anchor, kind);
    return item;
  })));
  if (found.length === 0) list.firstElementChild!.textContent = 'Nothing is called so.';
  list.hidden = false;
};

input.addEventListener('input', () => { void show(); });
form.addEventListener('submit', (event) => {
  event.preventDefault();
  list.querySelector('a')?.click();
});

import { html, type Html } from './html.js';

/** The parts of the site, as its head lists them. */
export const sections = { guides: 'Guides', species: 'Species', rules: 'Rules', operations: 'Operations', facts: 'Facts', sources: 'Sources', errors: 'Errors' } as const;

export type Section = keyof typeof sections;

/** A page before it is laid out. Links within the site begin with `~/`. */
export interface Page {
  /** Such as `species/acer-palmatum.html`. */
  readonly path: string;
  readonly title: string;
  readonly section?: Section;
  /** One line: what it holds. */
  readonly description: string;
  /** Other words by which it is looked for. */
  readonly words: string;
  readonly body: Html;
  /** What its head needs beside the rest: scripts and styles of its own. */
  readonly head?: Html;
}

/** A link within the site. */
export const link = (path: string, text: string | Html): Html => html`<a href="~/${path}">${text}</a>`;

/** A page as a whole: head, navigation, search and body, every link relative to where it stands. */
export const laidOut = ({ path, title, section, description, body, head }: Page): string => {
  const up = '../'.repeat(path.split('/').length - 1);
  const whole = html`<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta http-equiv="Content-Security-Policy" content="default-src 'self'">
<meta name="description" content="${description}">
<meta name="color-scheme" content="light dark">
<title>${title} · sparebud</title>
<link rel="stylesheet" href="~/site.css">
<link rel="icon" href="~/icon.svg" type="image/svg+xml">
<script type="module" src="~/search.js"></script>${head}
</head>
<body>
<a class="skip" href="#main">To the text</a>
<header>
<a class="name" href="~/index.html">sparebud</a>
<nav aria-label="Parts of the site"><ul><li><a href="~/live/index.html"${path.startsWith('live/') ? html` aria-current="true"` : ''}>Ask</a></li>${Object.entries(sections).map(([id, label]) => html`<li><a href="~/${id}/index.html"${section === id ? html` aria-current="true"` : ''}>${label}</a></li>`)}<li><a href="~/api/index.html">API</a></li></ul></nav>
<form role="search" data-up="${up}"><label for="look">Search</label><input id="look" type="search" autocomplete="off" aria-controls="found"></form>
<ol id="found" aria-live="polite" hidden></ol>
</header>
<main id="main">
${body}
</main>
<footer><p>Verdicts are advice, not certainty. Local law, the label of a product and qualified help come first.</p></footer>
</body>
</html>
`;
  return whole.html.replaceAll(/(href|src)="~\//g, `$1="${up}`);
};

import type { Knowledge, SourceWord } from '../../knowledge/knowledge.js';
import { html, type Html } from './html.js';
import { link } from './page.js';

const from: Readonly<Record<SourceWord['from'], string>> = { read: 'read', memory: 'recalled', practice: 'common practice' };

/** Sources by their ids, each with a link to where it is told in full. */
export const sourceList = (ids: readonly string[], { sources }: Knowledge): Html =>
  html`${ids.flatMap((id, i) => [i === 0 ? '' : '; ', link(`sources/index.html#${id}`, id), sources[id] === undefined ? '' : ` (${from[sources[id].from]})`])}`;

/** Every source in full. */
export const sourceEntries = ({ sources }: Knowledge): Html =>
  html`<dl class="sources">${Object.values(sources).map(({ id, title, author, year, in: within, from: how, studied, extent, note }) => html`<dt id="${id}">${id}</dt><dd>${author === undefined ? '' : `${author}: `}${title}${within === undefined ? '' : `. ${within}`}${year === undefined ? '' : `, ${year}`}. <small>${from[how]}${extent === undefined ? '' : `, ${extent}`}; studied: ${studied}${note === undefined ? '' : `; ${note}`}</small></dd>`)}</dl>`;

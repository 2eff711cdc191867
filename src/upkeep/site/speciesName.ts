import type { Species } from '../../knowledge/knowledge.js';
import { html, type Html } from './html.js';

/** A name as it is printed: of a species or genus in italics, of a group in plain words. */
export const speciesName = ({ name, rank }: Species): Html => (rank === 'group' ? html`${name}` : html`<i>${name}</i>`);

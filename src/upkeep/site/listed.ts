import { html, type Html } from './html.js';

/** Pieces one after another, parted by commas. */
export const listed = (pieces: readonly (Html | string)[]): Html => html`${pieces.flatMap((piece, i) => (i === 0 ? [piece] : [', ', piece]))}`;

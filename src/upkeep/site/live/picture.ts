/// <reference lib="dom" />
import type { Knowledge } from 'sparebud';
import type { Wording } from 'sparebud/picture';
import { el } from './el.js';

/** The texts of pictures, from the wording that comes with the knowledge. */
export const wordingOf = ({ wording }: Knowledge): Wording => (id, params = {}) => (wording[id] ?? id).replaceAll(/\{([^}]+)\}/g, (_, name: string) => params[name] ?? '');

/** SVG text as a part of the page, in a frame that scrolls sideways where the page is narrow. */
export const picture = (svg: string, label: string): HTMLElement =>
  el('div', { class: 'wide picture', tabindex: '0', role: 'region', 'aria-label': label }, document.importNode(new DOMParser().parseFromString(svg, 'image/svg+xml').documentElement, true));

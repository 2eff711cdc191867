import type { Knowledge } from '../../knowledge/knowledge.js';
import { factLabel } from './factLabel.js';
import type { Html } from './html.js';
import { link } from './page.js';

/** A fact in a few words, with a link to its page; its id where there is no such fact. */
export const factLink = (id: string, { facts }: Knowledge): Html | string => {
  const word = facts[id];
  return word === undefined ? id : link(`facts/${id}.html`, factLabel(word));
};

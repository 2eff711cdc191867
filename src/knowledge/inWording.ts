import type { Knowledge } from './knowledge.js';
import { withTexts } from './withTexts.js';

/**
 * The same knowledge in other words, under the same version and hash: what the wording lacks, or gives as anything but text, stays as it is.
 *
 * @param wording texts by id, as `sparebud/wording/en` lists them
 */
export const inWording = (knowledge: Knowledge, wording: Readonly<Record<string, string>>): Knowledge => {
  const texts = Object.fromEntries(Object.entries(wording).filter(([, text]) => typeof text === 'string'));
  return { ...knowledge, ...withTexts(knowledge, (id, own) => texts[id] ?? own), wording: { ...knowledge.wording, ...texts } };
};

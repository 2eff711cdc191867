import { readKnowledge } from '../../knowledge/read/readKnowledge.js';
import { coverOver } from '../../upkeep/cover/coverOver.js';
import { coverText } from '../../upkeep/cover/coverText.js';
import { stationsIn, wholeCorpus } from '../../upkeep/wholeCorpus.js';

/** Shows where the rules of a folder speak over the corpus. */
export const runCover = async (folder: string, { most, json }: { readonly most?: number; readonly json?: true }): Promise<void> => {
  const knowledge = readKnowledge(folder);
  const every = wholeCorpus(folder, knowledge);
  const asked = most === undefined || most >= every.length ? every : Array.from({ length: most }, (_, i) => every[Math.floor((i * every.length) / most)]!);
  const cover = await coverOver(knowledge, stationsIn(folder), asked);
  process.stdout.write(json === true ? `${JSON.stringify(cover, undefined, 1)}\n` : coverText(cover));
};

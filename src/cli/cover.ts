import { Command, InvalidArgumentError } from 'commander';
import { readKnowledge } from '../knowledge/read/readKnowledge.js';
import { coverOver } from '../upkeep/cover/coverOver.js';
import { coverText } from '../upkeep/cover/coverText.js';
import { stationsIn, wholeCorpus } from '../upkeep/wholeCorpus.js';

const count = (written: string): number => {
  const value = Number(written);
  if (!Number.isInteger(value) || value < 1) throw new InvalidArgumentError('a whole number from 1 is meant');
  return value;
};

/** `sparebud cover`: where rules speak over the corpus, and which never have the word. */
export const coverCommand = (): Command =>
  new Command('cover')
    .description('show where no rule speaks, or only possibly; rules that never fire or never decide; thresholds without an example')
    .argument('[folder]', 'a folder that holds species/, rules/, shared/ and tests/', '.')
    .option('--most <proposals>', 'ask so many, evenly picked, in place of all', count)
    .option('--json', 'print as JSON')
    .addHelpText('after', '\nExample:\n  sparebud cover --most 1000')
    .action(async (folder: string, { most, json }: { readonly most?: number; readonly json?: true }) => {
      const knowledge = readKnowledge(folder);
      const every = wholeCorpus(folder, knowledge);
      const asked = most === undefined || most >= every.length ? every : Array.from({ length: most }, (_, i) => every[Math.floor((i * every.length) / most)]!);
      const cover = await coverOver(knowledge, stationsIn(folder), asked);
      process.stdout.write(json === true ? `${JSON.stringify(cover, undefined, 1)}\n` : coverText(cover));
    });

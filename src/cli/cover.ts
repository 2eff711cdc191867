import { Command, InvalidArgumentError } from 'commander';

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
    .action(async (folder: string, options: { readonly most?: number; readonly json?: true }) => await (await import('./run/runCover.js')).runCover(folder, options));

import { Command } from 'commander';

/** `sparebud vet`: checks a folder of knowledge, and with `--mend` puts its files in order first. */
export const vetCommand = (): Command =>
  new Command('vet')
    .description('check a folder of species, rules and shared words: a line for each fault')
    .argument('[folder]', 'folder that holds species/, rules/ and shared/', '.')
    .option('--mend', 'first put files in order, take out traits that repeat the parent, and draft the examples that rules lack, as comments to confirm')
    .addHelpText('after', '\nExample:\n  sparebud vet')
    .action(async (folder: string, options: { readonly mend?: true }) => await (await import('./run/runVet.js')).runVet(folder, options));

import { Command, Option } from 'commander';
import type { runNew } from './run/runNew.js';

type Run = typeof runNew;

/* What reads and writes files is loaded only where it is run: help needs none of it. */
const run = async (): Promise<Run> => (await import('./run/runNew.js')).runNew;

const folderOption = (): Option => new Option('--folder <folder>', 'folder that holds species/, rules/ and shared/').default('.');
const next = '\nThen fill it in; `sparebud vet` says what is left, `sparebud vet --mend` puts it in order.\n';

const speciesCommand = (): Command =>
  new Command('species')
    .description('a species or genus, with what its parents say of each trait')
    .argument('<name>', 'the accepted name: "Acer griseum"; one word is a genus')
    .option('--parent <id>', 'the genus or group that it differs from; its genus where none is named')
    .addOption(folderOption())
    .addHelpText('after', `${next}\nExample:\n  sparebud new species "Acer griseum"`)
    .action(async (...told: Parameters<Run['species']>) => (await run()).species(...told));

const ruleCommand = (): Command =>
  new Command('rule')
    .description('a rule, with its places to fill in and the facts that it may look at')
    .argument('<id>', 'theme and name: roots/too-late')
    .requiredOption('--operations <ids>', 'on which work, separated by commas', (written: string) => written.split(',').map((id) => id.trim()))
    .addOption(new Option('--verdict <verdict>', 'what it says').choices(['risky', 'advise-against']).default('risky'))
    .addOption(folderOption())
    .addHelpText('after', `${next}\nExample:\n  sparebud new rule roots/too-late --operations repot,collect`)
    .action(async (...told: Parameters<Run['rule']>) => (await run()).rule(...told));

const sourceCommand = (): Command =>
  new Command('source')
    .description('an entry of shared/sources.yaml, in its place')
    .argument('<id>', 'author and year: smith-1998')
    .option('--title <title>', 'its title')
    .option('--author <author>')
    .option('--year <year>')
    .option('--in <where>', 'journal, series or site')
    .option('--from <how>', 'read, memory or practice: never mark as read what was recalled')
    .option('--extent <extent>', 'how much was read: full, part, abstract, table or quoted')
    .option('--grade <grade>', 'journal, standard, extension, agency, press, trade, law, practice or data')
    .option('--studied <setting>', 'container, nursery, landscape, forest, orchard, lab, garden, seed, law, practice or mixed')
    .addOption(folderOption())
    .addHelpText('after', '\nExample:\n  sparebud new source smith-1998 --title "Roots of potted trees" --from read --extent abstract --grade journal --studied container')
    .action(async (...told: Parameters<Run['source']>) => (await run()).source(...told));

/** `sparebud new`: scaffolds, with what is known already. */
export const newCommand = (): Command => {
  const command = new Command('new').description('write a species, rule or source to fill in, with what is known of it')
    .addHelpText('after', '\nExample:\n  sparebud new species "Acer griseum"');
  for (const each of [speciesCommand(), ruleCommand(), sourceCommand()]) command.addCommand(each);
  return command;
};

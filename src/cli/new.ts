import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { Command, Option } from 'commander';
import { SparebudError } from '../knowledge/error.js';
import { readParts } from '../knowledge/read/readKnowledge.js';
import { writeEditorSchemas } from '../upkeep/editorSchemas.js';
import { withoutMember } from '../upkeep/mend/withoutMember.js';
import { newRule } from '../upkeep/scaffold/newRule.js';
import { newSource } from '../upkeep/scaffold/newSource.js';
import { type NewFile, newSpecies } from '../upkeep/scaffold/newSpecies.js';

const write = (folder: string, { path, text }: NewFile): void => {
  const whole = join(folder, path);
  if (existsSync(whole)) throw new SparebudError([{ code: 'duplicate', path, message: `${path} is there already`, help: 'mend it, or name another' }]);
  mkdirSync(dirname(whole), { recursive: true });
  writeFileSync(whole, text);
  writeEditorSchemas(folder, readParts(folder).parts);
  process.stdout.write(`wrote ${path}\n`);
};

const folderOption = (): Option => new Option('--folder <folder>', 'folder that holds species/, rules/ and shared/').default('.');
const next = '\nThen fill it in; `sparebud vet` says what is left, `sparebud vet --mend` puts it in order.\n';

const speciesCommand = (): Command =>
  new Command('species')
    .description('a species or genus, with what its parents say of each trait')
    .argument('<name>', 'the accepted name: "Acer griseum"; one word is a genus')
    .option('--parent <id>', 'the genus or group that it differs from; its genus where none is named')
    .addOption(folderOption())
    .addHelpText('after', `${next}\nExample:\n  sparebud new species "Acer griseum"`)
    .action((name: string, options: { readonly parent?: string; readonly folder: string }) => {
      const { parts, files } = readParts(options.folder);
      const made = newSpecies(name, options.parent, parts);
      write(options.folder, made);
      if (made.memberOf === undefined) return;
      const path = [...files.keys()].find((file) => file.endsWith(`/${made.memberOf!}.yaml`))!;
      writeFileSync(join(options.folder, path), withoutMember(readFileSync(join(options.folder, path), 'utf8'), made.path));
      process.stdout.write(`took it out of the members of ${path}\n`);
    });

const ruleCommand = (): Command =>
  new Command('rule')
    .description('a rule, with its places to fill in and the facts that it may look at')
    .argument('<id>', 'theme and name: roots/too-late')
    .requiredOption('--operations <ids>', 'on which work, separated by commas', (written: string) => written.split(',').map((id) => id.trim()))
    .addOption(new Option('--verdict <verdict>', 'what it says').choices(['risky', 'advise-against']).default('risky'))
    .addOption(folderOption())
    .addHelpText('after', `${next}\nExample:\n  sparebud new rule roots/too-late --operations repot,collect`)
    .action((id: string, options: { readonly operations: readonly string[]; readonly verdict: string; readonly folder: string }) => write(options.folder, newRule(id, options.operations, options.verdict, readParts(options.folder).parts)));

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
    .action((id: string, options: Readonly<Record<string, string>> & { readonly folder: string }) => {
      const { folder, ...told } = options;
      const path = join(folder, 'shared/sources.yaml');
      writeFileSync(path, newSource(id, told, readFileSync(path, 'utf8')));
      writeEditorSchemas(folder, readParts(folder).parts);
      process.stdout.write(`added ${id} to shared/sources.yaml\n`);
    });

/** `sparebud new`: scaffolds, with what is known already. */
export const newCommand = (): Command => {
  const command = new Command('new').description('write a species, rule or source to fill in, with what is known of it')
    .addHelpText('after', '\nExample:\n  sparebud new species "Acer griseum"');
  for (const each of [speciesCommand(), ruleCommand(), sourceCommand()]) command.addCommand(each);
  return command;
};

import { Command } from 'commander';
import { mend } from '../upkeep/mend/mend.js';
import { vet } from '../upkeep/vet.js';
import { printIssue } from '../knowledge/printIssue.js';

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;

/** `sparebud vet`: checks a folder of knowledge, and with `--mend` puts its files in order first. */
export const vetCommand = (): Command =>
  new Command('vet')
    .description('check a folder of species, rules and shared words: a line for each fault')
    .argument('[folder]', 'folder that holds species/, rules/ and shared/', '.')
    .option('--mend', 'first put files in order, take out traits that repeat the parent, and draft the examples that rules lack, as comments to confirm')
    .addHelpText('after', '\nExample:\n  sparebud vet')
    .action(async (folder: string, options: { readonly mend?: true }) => {
      if (options.mend === true) {
        const { files, drafts } = await mend(folder);
        for (const file of files) process.stdout.write(`mended ${file}${drafts[file] === undefined ? '' : `: ${counted(drafts[file], 'draft')} of examples to confirm`}\n`);
      }
      const { issues, species, rules, sources } = await vet(folder);
      for (const issue of issues) process.stdout.write(printIssue(issue));
      process.stdout.write(`${species} species files, ${rules} rules, ${sources} sources: ${issues.length === 0 ? 'no fault' : counted(issues.length, 'fault')}\n`);
      if (issues.length > 0) process.exitCode = 2;
    });

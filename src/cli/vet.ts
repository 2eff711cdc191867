import { Command } from 'commander';
import { vet } from '../upkeep/vet.js';
import { printIssue } from './printIssue.js';

export const vetCommand = (): Command =>
  new Command('vet')
    .description('check a folder of species, rules and shared words: a line for each fault')
    .argument('[folder]', 'folder that holds species/, rules/ and shared/', '.')
    .action(async (folder: string) => {
      const { issues, species, rules, sources } = await vet(folder);
      for (const issue of issues) process.stdout.write(printIssue(issue));
      process.stdout.write(`${species} species files, ${rules} rules, ${sources} sources: ${issues.length === 0 ? 'no fault' : issues.length === 1 ? '1 fault' : `${issues.length} faults`}\n`);
      if (issues.length > 0) process.exitCode = 2;
    });

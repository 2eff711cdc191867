import { printIssue } from '../../knowledge/printIssue.js';
import { mend } from '../../upkeep/mend/mend.js';
import { vet } from '../../upkeep/vet.js';

const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? '' : 's'}`;

/** Checks a folder of knowledge, and says each fault. */
export const runVet = async (folder: string, options: { readonly mend?: true }): Promise<void> => {
  if (options.mend === true) {
    const { files, drafts } = await mend(folder);
    for (const file of files) process.stdout.write(`mended ${file}${drafts[file] === undefined ? '' : `: ${counted(drafts[file], 'draft')} of examples to confirm`}\n`);
  }
  const { issues, species, rules, sources } = await vet(folder);
  for (const issue of issues) process.stdout.write(printIssue(issue));
  process.stdout.write(`${species} species files, ${rules} rules, ${sources} sources: ${issues.length === 0 ? 'no fault' : counted(issues.length, 'fault')}\n`);
  if (issues.length > 0) process.exitCode = 2;
};

import { Command } from 'commander';
import type { Advisor } from '../advisor.js';
import { message } from '../advice/message.js';
import type { Proposal } from '../contract/types.generated.js';
import { treePicture } from '../picture/treePicture.js';
import type { Units } from './page/inUnits.js';
import { pageOf } from './page/page.js';
import { unitsOption } from './page/unitsOption.js';
import { printKeepers } from './printKeepers.js';
import { setAt } from './proposalFlags.js';
import { readProposals } from './readProposals.js';
import { shownStructure } from './shownStructure.js';
import { today } from './today.js';

interface Options {
  readonly units: Units;
  readonly aim?: string;
  readonly date?: string;
  readonly years?: string;
  readonly json?: true;
  readonly svg?: true;
}

/** `sparebud keepers`: which branches of a tree to keep. */
export const keepersCommand = (advisor: Advisor): Command => {
  const { knowledge } = advisor;
  return new Command('keepers')
    .description('which branches of a tree to keep for an aim, which go, and in which sittings')
    .argument('<file>', 'a YAML or JSON file with tree (its structure told), where and date, or -')
    .option('--aim <style>', `the style aimed at: ${Object.keys(knowledge.aims.styles).join(', ')}`)
    .option('--date <date>', 'the first day on which something may be done (today where it is not given)')
    .option('--years <number>', `over how many years the work may be spread (${knowledge.aims.years} where it is not given)`)
    .addOption(unitsOption())
    .option('--json', 'print as JSON')
    .option('--svg', 'print a picture of the best set')
    .addHelpText('after', `${shownStructure}\nExample:\n  sparebud keepers tree.yaml --aim informal-upright --date 2027-03-01`)
    .action(async (file: string, { aim, date, years, json, svg, units }: Options) => {
      let [asked] = await readProposals(file);
      if (aim !== undefined) asked = setAt(asked, 'tree.aim.style', aim);
      if (years !== undefined) asked = setAt(asked, 'years', Number(years));
      asked = setAt(asked, 'date', date ?? (asked as { readonly date?: string } | undefined)?.date ?? today());
      const keepers = await advisor.keepers(asked);
      if (json === true) process.stdout.write(`${JSON.stringify(keepers, undefined, 2)}\n`);
      else if (svg === true) process.stdout.write(`${treePicture((asked as { readonly tree: Proposal['tree'] }).tree, (id, params = {}) => message(knowledge, id, params).text, keepers.sets[0])}\n`);
      else process.stdout.write(printKeepers(keepers, knowledge, pageOf({ units })));
    });
};

import { Command } from 'commander';
import { readKnowledge } from '../knowledge/read/readKnowledge.js';
import { knowledgeAt } from '../upkeep/shift/knowledgeAt.js';
import { shiftInParts } from '../upkeep/shift/shiftInParts.js';
import { shiftJson, shiftMarkdown, shiftText } from '../upkeep/shift/shiftText.js';
import { stationsIn, shiftCorpus } from '../upkeep/wholeCorpus.js';

interface Options {
  readonly against: string;
  readonly markdown?: true;
  readonly json?: true;
}

/** `sparebud shift`: which answers change between a git revision of the knowledge and the folder as it stands. */
export const shiftCommand = (): Command =>
  new Command('shift')
    .description('show which answers change between a git revision of the knowledge and the folder as it stands')
    .argument('[folder]', 'a clone that holds species/, rules/, shared/ and tests/', '.')
    .option('--against <rev>', 'the revision to compare with', 'HEAD')
    .option('--markdown', 'print as Markdown, for a pull request')
    .option('--json', 'print as JSON')
    .addHelpText('after', '\nExample:\n  sparebud shift --against main')
    .action(async (folder: string, options: Options) => {
      const after = readKnowledge(folder);
      const shift = await shiftInParts({ before: knowledgeAt(folder, options.against), after, stations: stationsIn(folder), proposals: shiftCorpus(folder, after) });
      const print = options.json === true ? shiftJson : options.markdown === true ? shiftMarkdown : shiftText;
      process.stdout.write(print(shift, options.against));
    });

import { readKnowledge } from '../../knowledge/read/readKnowledge.js';
import { knowledgeAt } from '../../upkeep/shift/knowledgeAt.js';
import { shiftInParts } from '../../upkeep/shift/shiftInParts.js';
import { shiftJson, shiftMarkdown, shiftText } from '../../upkeep/shift/shiftText.js';
import { stationsIn, shiftCorpus } from '../../upkeep/wholeCorpus.js';

export interface ShiftOptions {
  readonly against: string;
  readonly markdown?: true;
  readonly json?: true;
}

/** Shows which answers change between a git revision and the folder as it stands. */
export const runShift = async (folder: string, options: ShiftOptions): Promise<void> => {
  const after = readKnowledge(folder);
  const shift = await shiftInParts({ before: knowledgeAt(folder, options.against), after, stations: stationsIn(folder), proposals: shiftCorpus(folder, after) });
  const print = options.json === true ? shiftJson : options.markdown === true ? shiftMarkdown : shiftText;
  process.stdout.write(print(shift, options.against));
};

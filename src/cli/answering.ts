import type { Command } from 'commander';
import { createAdvisor } from '../advisor.js';
import { knowledge } from '../knowledge/bundled.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { places } from '../season/places.js';
import { askCommand } from './ask.js';
import { compareCommand } from './compare.js';
import { dueCommand } from './due.js';
import { explainCommand } from './explain.js';
import { keepersCommand } from './keepers.js';
import { measureCommand } from './measure.js';
import { operationsCommand } from './operations.js';
import { planCommand } from './plan.js';
import { placesCommand } from './places.js';
import { ruleCommand } from './rule.js';
import { speciesCommand } from './species.js';
import { yearCommand } from './year.js';

/** The commands that answer from the bundled knowledge. */
export const addAnsweringCommands = (program: Command): void => {
  const advisor = createAdvisor(knowledge, { places });
  program.version(knowledge.version);
  const noted = async (): Promise<Knowledge> => (await import('../knowledge/published/withNotes.js')).withNotes(knowledge);
  for (const command of [askCommand(advisor), compareCommand(advisor), explainCommand(advisor), planCommand(advisor), dueCommand(advisor), keepersCommand(advisor), measureCommand(knowledge), yearCommand(advisor), operationsCommand(advisor), speciesCommand(advisor, noted), ruleCommand(knowledge, noted), placesCommand(places)]) program.addCommand(command);
};

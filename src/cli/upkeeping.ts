import type { Command } from 'commander';
import { coverCommand } from './cover.js';
import { newCommand } from './new.js';
import { shiftCommand } from './shift.js';
import { vetCommand } from './vet.js';

/** The commands that maintainers run on a folder of knowledge; what they do is loaded where they are run. */
export const addUpkeepCommands = (program: Command): void => {
  for (const command of [vetCommand(), newCommand(), coverCommand(), shiftCommand()]) program.addCommand(command);
};

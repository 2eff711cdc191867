#!/usr/bin/env node
import { Command } from 'commander';
import { SparebudError } from '../knowledge/error.js';
import { newCommand } from './new.js';
import { printIssue } from '../knowledge/printIssue.js';
import { coverCommand } from './cover.js';
import { shiftCommand } from './shift.js';
import { vetCommand } from './vet.js';

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

const program = new Command('sparebud').description('May I do this, to this tree, here, on this day?').showHelpAfterError('(see --help)')
  .addHelpText('after', '\nExample:\n  sparebud ask repot "trident maple" --roots-removed 0.4 --place koeln-cologne-germany --date 2027-03-20');
const upkeep = [vetCommand(), newCommand(), coverCommand(), shiftCommand()];
for (const command of upkeep) program.addCommand(command);

try {
  /* Knowledge is loaded only where it is asked; what maintainers run looks at a folder, and runs where none could be built yet. */
  if (!upkeep.some((command) => command.name() === process.argv[2])) {
    const { addAnsweringCommands } = await import('./answering.js');
    addAnsweringCommands(program);
  }
  /* 1 is kept for what --fail-on waits for: a command that cannot be understood was not answered. */
  for (const command of [program, ...program.commands]) command.exitOverride(({ exitCode }) => process.exit(exitCode === 0 ? 0 : 2));
  await program.parseAsync();
} catch (cause) {
  if (!(cause instanceof SparebudError)) throw cause;
  for (const issue of cause.issues) process.stderr.write(printIssue(issue));
  process.exitCode = 2;
}

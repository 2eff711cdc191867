#!/usr/bin/env node
import { Command } from 'commander';
import { SparebudError } from '../knowledge/error.js';
import { printIssue } from './printIssue.js';
import { vetCommand } from './vet.js';

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

const program = new Command('sparebud').description('May I do this, to this tree, here, on this day?').showHelpAfterError('(see --help)').addCommand(vetCommand());

try {
  /* Knowledge is loaded only where it is asked; `vet` looks at a folder, and runs where none could be built yet. */
  if (process.argv[2] !== 'vet') {
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

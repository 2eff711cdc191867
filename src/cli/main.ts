#!/usr/bin/env node
import module from 'node:module';
import { Command } from 'commander';
import { SparebudError } from '../knowledge/error.js';
import { printIssue } from '../knowledge/printIssue.js';

/* From Node 22.1 on: what was compiled once is kept for the next run. */
(module as { readonly enableCompileCache?: () => unknown }).enableCompileCache?.();

process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code === 'EPIPE') process.exit(0);
  throw error;
});

const program = new Command('sparebud').description('May I do this, to this tree, here, on this day?').showHelpAfterError('(see --help)')
  .addHelpText('after', '\nExit status: 0 answered, whatever the verdict; 1 what --fail-on waits for; 2 not\nunderstood, not answered in part, or at fault by `vet`.\n\nExample:\n  sparebud ask repot "trident maple" --roots-removed 0.4 --place koeln-cologne-germany --date 2027-03-20');

/** What maintainers run: it looks at a folder, and runs where no knowledge could be built yet. */
const upkeep = ['vet', 'new', 'cover', 'shift'];
const named = (name: string | undefined): boolean => program.commands.some((command) => command.name() === name);

try {
  const asked = process.argv[2];
  /* Knowledge is loaded only where it is asked, and what maintainers run where they run it, or where all is listed. */
  if (asked === undefined || !upkeep.includes(asked)) (await import('./answering.js')).addAnsweringCommands(program);
  if (!named(asked)) (await import('./upkeeping.js')).addUpkeepCommands(program);
  /* 1 is kept for what --fail-on waits for: a command that cannot be understood was not answered. */
  for (const command of [program, ...program.commands]) command.exitOverride(({ exitCode }) => process.exit(exitCode === 0 ? 0 : 2));
  await program.parseAsync();
} catch (cause) {
  if (cause instanceof SparebudError) for (const issue of cause.issues) process.stderr.write(printIssue(issue));
  else process.stderr.write(`${cause instanceof Error ? cause.stack : String(cause)}\n`);
  process.exitCode = 2;
}

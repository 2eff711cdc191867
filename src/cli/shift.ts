import { Command } from 'commander';
import type { ShiftOptions } from './run/runShift.js';

/** `sparebud shift`: which answers change between a git revision of the knowledge and the folder as it stands. */
export const shiftCommand = (): Command =>
  new Command('shift')
    .description('show which answers change between a git revision of the knowledge and the folder as it stands')
    .argument('[folder]', 'a clone that holds species/, rules/, shared/ and tests/', '.')
    .option('--against <rev>', 'the revision to compare with', 'HEAD')
    .option('--markdown', 'print as Markdown, for a pull request')
    .option('--json', 'print as JSON')
    .addHelpText('after', '\nExample:\n  sparebud shift --against main')
    .action(async (folder: string, options: ShiftOptions) => await (await import('./run/runShift.js')).runShift(folder, options));

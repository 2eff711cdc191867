import { readFileSync, writeFileSync } from 'node:fs';
import { withOutputs } from './consoleBlocks.js';
import { runBuilt } from './runBuilt.js';
import { runShell } from './runShell.js';

/* `npm run readme`: the outputs shown in README.md and the pages, as printed now; the recipes need jq. */
for (const [file, run] of [['README.md', runBuilt], ['docs/recipes.md', runShell], ['docs/stability.md', runShell]] as const) writeFileSync(file, withOutputs(readFileSync(file, 'utf8'), run(process.cwd())));

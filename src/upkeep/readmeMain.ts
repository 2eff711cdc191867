import { readFileSync, writeFileSync } from 'node:fs';
import { withOutputs } from './consoleBlocks.js';
import { runBuilt } from './runBuilt.js';

/* `npm run readme`: the outputs shown in README.md, as printed now. */
writeFileSync('README.md', withOutputs(readFileSync('README.md', 'utf8'), runBuilt(process.cwd())));

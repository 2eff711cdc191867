import { readFileSync, writeFileSync } from 'node:fs';
import { withCodeOutputs } from './codeBlocks.js';
import { withOutputs } from './consoleBlocks.js';
import { runBuilt } from './runBuilt.js';
import { runCode } from './runCode.js';
import { runShell } from './runShell.js';
import { pagesThatRun } from './pagesThatRun.js';

/* `npm run readme`: the outputs shown in README.md and the pages, as printed now; the recipes need jq. */
const root = process.cwd();
writeFileSync('README.md', withOutputs(readFileSync('README.md', 'utf8'), runBuilt(root)));
for (const page of pagesThatRun) writeFileSync(page, withCodeOutputs(withOutputs(readFileSync(page, 'utf8'), runShell(root)), runCode(root)));

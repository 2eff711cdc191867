import { Command } from 'commander';
import colors from 'picocolors';
import type { Advisor } from '../advisor.js';
import type { Explained } from '../advice/explain.js';
import { hanging } from './page/hanging.js';
import type { Units } from './page/inUnits.js';
import { type Page, pageOf } from './page/page.js';
import { unitsOption } from './page/unitsOption.js';
import { printIssue } from '../knowledge/printIssue.js';
import { readProposals } from './readProposals.js';
import { painted } from './verdictText.js';

const printExplained = ({ knowledge, verdict, findings, issues }: Explained, page: Page): string => {
  const now = verdict.now === undefined ? `was ${painted(verdict.then)}; it cannot be asked today` : verdict.now === verdict.then ? `${painted(verdict.then)}, as then` : `was ${painted(verdict.then)}, is ${painted(verdict.now)} now`;
  return [
    `${colors.bold('Verdict')} ${now}.`,
    knowledge.same ? `The knowledge is the same, ${knowledge.now}.` : `The knowledge was ${knowledge.then}, and is ${knowledge.now} now.`,
    ...findings.map(({ rule, renamedTo, why }) => hanging('- ', `${why.text} (${renamedTo === undefined ? rule : `${rule}, now ${renamedTo}`})`, page)),
    ...(issues ?? []).map((issue) => printIssue(issue).trimEnd()),
  ].join('\n');
};

/** `sparebud explain`: what has changed since an answer was kept. */
export const explainCommand = (advisor: Advisor): Command =>
  new Command('explain')
    .description('what has changed since an answer was kept: the verdict today, and what became of each rule')
    .argument('<file>', 'an assessment as JSON, as ask --json printed it, or -')
    .addOption(unitsOption())
    .option('--json', 'print as JSON')
    .addHelpText('after', '\nExample:\n  sparebud ask repot "trident maple" --date 2027-03-10 --json | sparebud explain -')
    .action(async (file: string, options: { readonly json?: true; readonly units: Units }) => {
      for (const kept of await readProposals(file)) {
        const explained = await advisor.explain(kept);
        process.stdout.write(options.json === true ? `${JSON.stringify(explained, undefined, 2)}\n` : `${printExplained(explained, pageOf(options))}\n`);
        if (explained.issues !== undefined) process.exitCode = 2;
      }
    });

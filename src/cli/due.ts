import { writeFileSync } from 'node:fs';
import { Command } from 'commander';
import type { Advisor } from '../advisor.js';
import { SparebudError } from '../knowledge/error.js';
import { dueCalendar } from './dueCalendar.js';
import type { Units } from './page/inUnits.js';
import { pageOf } from './page/page.js';
import { unitsOption } from './page/unitsOption.js';
import { printDue } from './printDue.js';
import { printIssue } from '../knowledge/printIssue.js';
import { readProposals } from './readProposals.js';
import { shownFile } from './shownFile.js';
import { today } from './today.js';

const example = `
where: { latitude: 51.1, longitude: 3.7 }
trees:
  - { id: maple-1, tree: { species: trident maple, lastRepotted: 2023-04 } }
  - { id: pine-1, tree: { species: Scots pine, log: [{ op: wire, date: 2026-10-01 }] } }`;

/** `sparebud due`: what a collection needs. */
export const dueCommand = (advisor: Advisor): Command =>
  new Command('due')
    .description('what is overdue, open now and soon, for a collection of trees')
    .argument('<file>', 'a YAML or JSON file with where and trees, or -')
    .option('--date <date>', 'the day (today)')
    .option('--days <number>', 'how many days ahead counts as soon')
    .addOption(unitsOption())
    .option('--json', 'print as JSON')
    .option('--ics <file>', 'write a calendar file (RFC 5545); - for standard output')
    .addHelpText('after', `${shownFile('collection.yaml', example)}\nExample:\n  sparebud due collection.yaml --date 2027-03-20`)
    .action(async (file: string, { date = today(), days, json, ics, units }: { readonly date?: string; readonly days?: string; readonly json?: true; readonly ics?: string; readonly units: Units }) => {
      const ahead = days === undefined ? undefined : Number(days);
      if (ahead !== undefined && !(Number.isInteger(ahead) && ahead >= 0 && ahead <= 366)) throw new SparebudError([{ code: 'out-of-bounds', path: '--days', message: `\`${days!}\` is out of bounds in \`--days\``, found: days, help: 'accepted: a whole number from 0 to 366' }]);
      const due = await advisor.due((await readProposals(file))[0], date, ahead);
      if (ics !== undefined && ics !== '-') writeFileSync(ics, dueCalendar(due, advisor.knowledge));
      if (ics === '-') process.stdout.write(dueCalendar(due, advisor.knowledge));
      else process.stdout.write(json === true ? `${JSON.stringify(due, undefined, 2)}\n` : printDue(due, advisor.knowledge, pageOf({ units })));
      for (const { tree, issues } of due.unanswered) {
        process.stderr.write(`${tree}:\n`);
        for (const issue of issues) process.stderr.write(printIssue(issue));
      }
      if (due.unanswered.length > 0) process.exitCode = 2;
    });

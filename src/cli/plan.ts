import { Command } from 'commander';
import type { Advisor } from '../advisor.js';
import { failOnOption, meets } from './failOn.js';
import type { Units } from './page/inUnits.js';
import { pageOf } from './page/page.js';
import { unitsOption } from './page/unitsOption.js';
import { printPlan } from './printPlan.js';
import { readProposals } from './readProposals.js';
import { shownFile } from './shownFile.js';

const example = `
tree: { species: trident maple, vigour: strong, lastRepotted: 2024-03 }
where: { latitude: 51.1, longitude: 3.7 }
steps:
  - { date: 2027-03-20, operations: [{ op: repot, rootsRemoved: 0.3 }] }
  - { date: 2027-06-10, operations: [{ op: thin-shoots }, { op: wire }] }`;

/** `sparebud plan`: work on one tree in steps. */
export const planCommand = (advisor: Advisor): Command =>
  new Command('plan')
    .description('judge a plan: steps in time, each on the tree as the steps before it leave it, and the strain that adds up')
    .argument('<file>', 'a YAML or JSON file with tree, where and steps, or -')
    .addOption(unitsOption())
    .option('--json', 'print as JSON')
    .addOption(failOnOption())
    .addHelpText('after', `${shownFile('plan.yaml', example)}\nExample:\n  sparebud plan plan.yaml`)
    .action(async (file: string, options: { readonly json?: true; readonly failOn?: string; readonly units: Units }) => {
      const plans = [];
      for (const question of await readProposals(file)) plans.push(await advisor.plan(question));
      process.stdout.write(options.json === true ? plans.map((plan) => `${JSON.stringify(plan, undefined, 2)}\n`).join('') : plans.map((plan) => printPlan(plan, advisor.knowledge, pageOf(options))).join('\n'));
      if (plans.some((plan) => plan.steps.some((step) => step.operations.some((assessment) => meets(options.failOn, assessment))))) process.exitCode = 1;
    });

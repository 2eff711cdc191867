import { Command } from 'commander';
import colors from 'picocolors';
import type { Advisor } from '../advisor.js';
import { SparebudError } from '../knowledge/error.js';
import { didYouMean } from '../knowledge/nearest.js';
import type { OperationForm, ParameterForm } from '../knowledge/operationForms.js';
import { workGroups } from '../upkeep/site/workGroups.js';
import { hanging } from './page/hanging.js';
import type { Units } from './page/inUnits.js';
import { type Page, pageOf } from './page/page.js';
import { unitsOption } from './page/unitsOption.js';

const parameterText = ({ label, meaning, type, unit, choices, bounds, assumed }: ParameterForm): string => {
  const kind = choices?.join(', ') ?? (type === 'boolean' ? 'true, false' : `${type}${unit === undefined ? '' : ` (${unit})`}${bounds === undefined ? '' : `, ${bounds.join(' to ')}`}`);
  return `${meaning === label ? '' : `${meaning}; `}${kind}${assumed === undefined ? '' : `; ${String(assumed)} where it is not told`}`;
};

const sheet = ({ op, label, parameters }: OperationForm, aliases: readonly string[], page: Page): string => {
  const width = Math.max(0, ...parameters.map(({ name }) => name.length)) + 4;
  return [
    `${colors.bold(label)}  (${op})`,
    ...(aliases.length === 0 ? [] : [hanging('  also: ', aliases.join(', '), page)]),
    ...(parameters.length === 0 ? [] : ['']),
    ...parameters.map((parameter) => hanging(`  ${parameter.name}`.padEnd(width), parameterText(parameter), page)),
  ].join('\n');
};

/** `sparebud operations`: the list of all with the trade names that they go by, or one with its parameters. */
export const operationsCommand = (advisor: Advisor): Command =>
  new Command('operations')
    .description('list the operations with their trade names, or show one with its parameters')
    .argument('[name]', 'an operation or a trade name of it')
    .addOption(unitsOption())
    .option('--json', 'print as JSON, a line for each')
    .addHelpText('after', '\nExample:\n  sparebud operations repot')
    .action((name: string | undefined, options: { readonly json?: true; readonly units: Units }) => {
      const { operations } = advisor.knowledge;
      const named = (op: string): readonly string[] => Object.keys(operations[op]?.aliases ?? {});
      const forms = advisor.operations().filter(({ op }) => name === undefined || op === name || named(op).includes(name));
      if (forms.length === 0) {
        const accepted = Object.keys(operations).flatMap((op) => [op, ...named(op)]);
        throw new SparebudError([{ code: 'unknown-operation', path: 'operations', message: `\`${name!}\` is not an operation`, found: name, help: didYouMean(name!, accepted) ?? 'see `sparebud operations` for the list' }]);
      }
      const page = pageOf(options);
      const lines = (group: string, within: readonly OperationForm[]): readonly string[] => [colors.bold(group), ...within.map(({ op }) => hanging(`  ${op}`.padEnd(22), named(op).join(', '), page))];
      if (options.json === true) for (const form of forms) process.stdout.write(`${JSON.stringify({ ...form, aliases: named(form.op) })}\n`);
      else if (name === undefined) process.stdout.write(`${workGroups(forms).flatMap(([group, within]) => lines(group, within)).join('\n')}\n`);
      else for (const form of forms) process.stdout.write(`${sheet(form, named(form.op), page)}\n`);
    });

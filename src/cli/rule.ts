import { Command } from 'commander';
import colors from 'picocolors';
import { engineRules } from '../engine/engineRules.js';
import { SparebudError } from '../knowledge/error.js';
import { didYouMean } from '../knowledge/nearest.js';
import type { Knowledge, Rule } from '../knowledge/knowledge.js';
import { hanging } from './page/hanging.js';
import type { Units } from './page/inUnits.js';
import { type Page, pageOf } from './page/page.js';
import { unitsOption } from './page/unitsOption.js';

const sheet = async (rule: Rule, knowledge: Knowledge, page: Page): Promise<string> => {
  const { stringify } = await import('yaml');
  const operations = rule.operations === 'all' ? 'every operation' : rule.operations.join(', ');
  const sources = rule.sources.map((id) => {
    const source = knowledge.sources[id];
    return hanging('  ', `${id}: ${source?.author === undefined ? '' : `${source.author}, `}${source?.title ?? ''}${source?.year === undefined ? '' : `, ${source.year}`} (${source?.from ?? 'unknown'}; studied: ${source?.studied ?? 'unknown'})`, page);
  });
  return [
    `${colors.bold(rule.title)}  (${rule.id})`, `${rule.verdict.replace('-', ' ')}; ${rule.costs} at stake; on ${operations}`, '', hanging('', rule.because, page), '',
    stringify({ when: rule.when, ...(rule.unless.length === 0 ? {} : { unless: rule.unless }) }).trimEnd(), '', 'sources:', ...sources, '', `examples: ${rule.examples.length}`, '',
  ].join('\n');
};

/** `sparebud rule`: the list of all, of a theme or of an operation, or one with its conditions, reasons and sources. */
export const ruleCommand = (knowledge: Knowledge, noted: () => Promise<Knowledge>): Command =>
  new Command('rule')
    .description('list the rules, those of a theme or an operation, or show one with its conditions and sources')
    .argument('[id]', 'such as roots/too-many; a theme such as roots; an operation such as repot')
    .addOption(unitsOption())
    .option('--json', 'print as JSON')
    .option('--engine', 'print all in the format of json-rules-engine, a rule a line')
    .addHelpText('after', '\nExample:\n  sparebud rule wound/girth-half')
    .action(async (id: string | undefined, options: { readonly units: Units; readonly json?: true; readonly engine?: true }) => {
      if (options.engine === true) {
        for (const rule of engineRules(knowledge)) process.stdout.write(`${JSON.stringify(rule)}\n`);
        return;
      }
      const rule = id !== undefined && Object.hasOwn(knowledge.rules, id) ? (await noted()).rules[id] : undefined;
      if (rule === undefined) {
        const listed = Object.values((options.json === true ? await noted() : knowledge).rules).filter((each) => id === undefined || each.id.startsWith(`${id}/`) || (each.operations !== 'all' && each.operations.includes(id)));
        for (const each of listed) process.stdout.write(options.json === true ? `${JSON.stringify(each)}\n` : `${each.id.padEnd(36)} ${each.verdict.padEnd(15)} ${each.title}\n`);
        if (listed.length > 0 || id === undefined) return;
        throw new SparebudError([{ code: 'unknown-name', path: 'rule', message: `unknown rule \`${id}\``, help: didYouMean(id, Object.keys(knowledge.rules)) ?? 'see `sparebud rule` for the list' }]);
      }
      process.stdout.write(options.json === true ? `${JSON.stringify(rule, undefined, 2)}\n` : await sheet(rule, knowledge, pageOf(options)));
    });

import { Command } from 'commander';
import colors from 'picocolors';
import { type Measures, measuresOf } from '../advice/measure/measure.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { hanging } from './page/hanging.js';
import type { Units } from './page/inUnits.js';
import { type Page, pageOf } from './page/page.js';
import { unitsOption } from './page/unitsOption.js';
import { readProposals } from './readProposals.js';
import { shownStructure } from './shownStructure.js';

/** What is of the same branches stands in one paragraph. */
const paragraphs = (entries: Measures['entries']): readonly string[] => {
  const texts = new Map<string, readonly string[]>();
  entries.forEach(({ of, text, certainty, measure }, i) => {
    const key = of[0] === 'tree' || measure === 'first' ? `tree ${i}` : of.join();
    texts.set(key, [...(texts.get(key) ?? []), certainty === 'estimated' ? `${text.text} (Estimate.)` : text.text]);
  });
  return [...texts.values()].map((lines) => lines.join(' '));
};

const printMeasures = ({ species, entries, wishes }: Measures, page: Page): string => {
  const lines = (texts: readonly string[]): readonly string[] => texts.map((text) => hanging('- ', text, page));
  return `${[colors.bold(species), ...lines(paragraphs(entries)), ...(wishes.length === 0 ? [] : ['', colors.bold('What would tell more'), ...lines(wishes.map(({ text }) => text))])].join('\n')}\n`;
};

/** `sparebud measure`: what the told structure of a tree shows, and what would tell more. */
export const measureCommand = (knowledge: Knowledge): Command =>
  new Command('measure')
    .description('what the told structure of a tree shows, before any work is asked about, and what would tell more')
    .argument('<file>', 'a YAML or JSON file with tree, its structure told, or -')
    .addOption(unitsOption())
    .option('--json', 'print as JSON')
    .addHelpText('after', `${shownStructure}\nExample:\n  sparebud measure tree.yaml`)
    .action(async (file: string, options: { readonly json?: true; readonly units: Units }) => {
      const all = (await readProposals(file)).map((written) => measuresOf(written, knowledge));
      process.stdout.write(options.json === true ? all.map((measures) => `${JSON.stringify(measures, undefined, 2)}\n`).join('') : all.map((measures) => printMeasures(measures, pageOf(options))).join('\n'));
    });

import { Command } from 'commander';
import colors from 'picocolors';
import type { Advisor } from '../advisor.js';
import type { Comparison, Variant } from '../advice/compare.js';
import { SparebudError } from '../knowledge/error.js';
import { addProposalFlags, setAt, typed, withFlags } from './proposalFlags.js';
import { isFile, readProposals } from './readProposals.js';

const span = (range: readonly number[] | undefined): string => (range === undefined ? '' : range[0] === range[1] ? String(range[0]) : `${range[0]}–${range[1]}`);

const cells = (variant: Variant, best: readonly string[]): readonly string[] => [
  `${best.includes(variant.label) ? '* ' : '  '}${variant.label}`,
  variant.verdict === undefined ? 'not answered' : `${variant.verdict.replace('-', ' ')}${variant.settled === true ? '' : ` (${variant.range?.map((end) => end.replace('-', ' ')).join(' to ') ?? ''})`}`,
  span(variant.expect?.closureYears), span(variant.expect?.dieBackMm), span(variant.expect?.recoveryWeeks),
  variant.issues === undefined ? [...variant.findingsAdded.map((rule) => `+${rule}`), ...variant.findingsGone.map((rule) => `-${rule}`)].join(' ') : variant.issues.map((issue) => issue.message).join('; '),
];

const table = ({ variants, best }: Comparison): string => {
  const rows = [['  way', 'verdict', 'closes (years)', 'dies back (mm)', 'recovers (weeks)', 'findings gained and lost'], ...variants.map((variant) => cells(variant, best))];
  const widths = rows[0]!.map((_, column) => Math.max(...rows.map((row) => row[column]!.length)));
  const lines = rows.map((row, i) => {
    const line = row.map((cell, column) => cell.padEnd(widths[column]!)).join('  ').trimEnd();
    return i === 0 ? colors.bold(line) : line;
  });
  const chosen = best.length === 1 ? `Best: ${best[0]!}.` : `Tied for best: ${best.join('; ')}.`;
  return `${lines.join('\n')}\n\n${chosen} The milder verdict, then the milder worst case, then the fewer findings.\n`;
};

/** `sparebud compare`: ways to do it side by side. */
export const compareCommand = (advisor: Advisor): Command =>
  addProposalFlags(
    new Command('compare')
      .description('set ways to do it side by side: another date, finish or share')
      .argument('[what]', 'the operation, or a YAML or JSON file, or -')
      .argument('[species]', 'id, accepted name, synonym or common name')
      .option('--or <path=value>', 'a way that differs in this; with commas in more than one (repeatable)', (text: string, had: readonly string[]) => [...had, text], [] as readonly string[])
      .option('--json', 'print as JSON'),
    advisor.knowledge,
  )
    .addHelpText('after', '\nExample:\n  sparebud compare repot "trident maple" --roots-removed 0.4 --place koeln-cologne-germany --date 2026-11-15 --or date=2027-03-20 --or operation.rootsRemoved=0.1')
    .action(async (what: string | undefined, species: string | undefined, options: { readonly or: readonly string[]; readonly json?: true } & Readonly<Record<string, unknown>>) => {
      const fromFile = what !== undefined && isFile(what);
      let asked: unknown = fromFile ? readProposals(what)[0] : {};
      if (what !== undefined && !fromFile) asked = setAt(asked, 'operation.op', what);
      if (species !== undefined) asked = setAt(asked, 'tree.species', species);
      asked = withFlags(asked, options, advisor.knowledge);
      if (options.or.length === 0) throw new SparebudError([{ code: 'missing', path: '--or', message: 'nothing to compare with', help: 'give at least one --or, such as --or date=2027-03-15' }]);
      const patches = options.or.map((text) => text.split(',').reduce<Record<string, unknown>>((patch, each) => {
        const [path, ...value] = each.split('=');
        return setAt(patch, path!.trim(), typed(value.join('=')));
      }, {}));
      const comparison = await advisor.compare(asked, patches);
      process.stdout.write(options.json === true ? `${JSON.stringify(comparison, undefined, 2)}\n` : table(comparison));
      if (comparison.variants.some((variant) => variant.issues !== undefined)) process.exitCode = 2;
    });

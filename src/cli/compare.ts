import { Command } from 'commander';
import type { Advisor } from '../advisor.js';
import { SparebudError } from '../knowledge/error.js';
import { askedOf } from './askedOf.js';
import type { Units } from './page/inUnits.js';
import { pageOf } from './page/page.js';
import { unitsOption } from './page/unitsOption.js';
import { printComparison } from './printComparison.js';
import { addProposalFlags, withSetting } from './proposalFlags.js';
import { isFile, readProposals } from './readProposals.js';

/** `sparebud compare`: ways to do it side by side. */
export const compareCommand = (advisor: Advisor): Command =>
  addProposalFlags(
    new Command('compare')
      .description('set ways to do it side by side: another date, finish or share')
      .argument('[what]', 'the operation, or a YAML or JSON file, or -')
      .argument('[species]', 'id, accepted name, synonym or common name')
      .option('--or <path=value>', 'a way that differs in this; with commas in more than one (repeatable)', (text: string, had: readonly string[] = []) => [...had, text])
      .addOption(unitsOption())
      .option('--json', 'print as JSON'),
    advisor.knowledge,
  )
    .addHelpText('after', '\nExample:\n  sparebud compare repot "trident maple" --roots-removed 0.4 --place koeln-cologne-germany --date 2026-11-15 --or date=2027-03-20 --or operation.rootsRemoved=0.1')
    .action(async (what: string | undefined, species: string | undefined, options: { readonly or?: readonly string[]; readonly units: Units; readonly json?: true } & Readonly<Record<string, unknown>>) => {
      const fromFile = what !== undefined && isFile(what);
      const asked = await askedOf(fromFile ? (await readProposals(what))[0] : undefined, { op: fromFile ? undefined : what, species }, options, advisor.knowledge);
      if (options.or === undefined) throw new SparebudError([{ code: 'missing', path: '--or', message: 'nothing to compare with', help: 'give at least one --or, such as --or date=2027-03-15' }]);
      const patches = await Promise.all(options.or.map(async (text) => {
        let patch: Record<string, unknown> = {};
        for (const each of text.split(',')) patch = await withSetting(patch, each, '--or', advisor.knowledge);
        return patch;
      }));
      const comparison = await advisor.compare(asked, patches);
      process.stdout.write(options.json === true ? `${JSON.stringify(comparison, undefined, 2)}\n` : printComparison(comparison, advisor.knowledge, pageOf(options)));
      if (comparison.variants.some((variant) => variant.issues !== undefined)) process.exitCode = 2;
    });

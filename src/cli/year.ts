import { Command } from 'commander';
import type { Advisor } from '../advisor.js';
import type { Proposal } from '../contract/types.generated.js';
import { yearPicture } from '../picture/yearPicture.js';
import { message } from '../advice/message.js';
import { SparebudError } from '../knowledge/error.js';
import type { Units } from './page/inUnits.js';
import { pageOf } from './page/page.js';
import { unitsOption } from './page/unitsOption.js';
import { printYear } from './printYear.js';
import { addProposalFlags, setAt, withFlags } from './proposalFlags.js';
import { isFile, readProposals } from './readProposals.js';
import { today } from './today.js';

/** `sparebud year`: what may be done when, over a year. */
export const yearCommand = (advisor: Advisor): Command => {
  const { knowledge } = advisor;
  const command = new Command('year')
    .description('a year of one tree at one place: phases, frost, and each operation’s verdict day by day')
    .argument('[species]', 'id, name or common name; or a YAML or JSON file with tree, where and from')
    .option('--from <date>', 'the day to begin with (the first of this year)')
    .option('--only <operations>', 'operations, with commas between')
    .addOption(unitsOption())
    .option('--json', 'print as JSON')
    .option('--svg', 'print a picture');
  return addProposalFlags(command, knowledge, ['where', 'tree'])
    .addHelpText('after', '\nExample:\n  sparebud year "trident maple" --place koeln-cologne-germany --vigour strong --only repot,cut-back')
    .action(async (what: string | undefined, options: { readonly from?: string; readonly only?: string; readonly json?: true; readonly svg?: true; readonly units: Units } & Readonly<Record<string, unknown>>) => {
      let asked: unknown = what !== undefined && isFile(what) ? (await readProposals(what))[0] : {};
      if (what !== undefined && !isFile(what)) asked = setAt(asked, 'tree.species', what);
      const { tree, where, from } = (await withFlags(asked, options, knowledge)) as { readonly tree: Proposal['tree']; readonly where?: Proposal['where']; readonly from?: string };
      if ((tree as Partial<Proposal['tree']> | undefined)?.species === undefined) throw new SparebudError([{ code: 'missing', path: 'tree.species', message: 'no species is told', help: 'name it, as in `sparebud year "trident maple"`; `sparebud species` lists them' }]);
      const year = await advisor.year({
        tree, ...(where === undefined ? {} : { where }), from: options.from ?? from ?? `${today().slice(0, 4)}-01-01`,
        ...(options.only === undefined ? {} : { operations: options.only.split(',').map((op) => ({ op: op.trim(), ...knowledge.operations[op.trim()]?.usual[0] })) }),
      });
      if (options.json === true) process.stdout.write(`${JSON.stringify(year, undefined, 2)}\n`);
      else if (options.svg === true) process.stdout.write(`${yearPicture(year, (id, params = {}) => message(knowledge, id, params).text)}\n`);
      else process.stdout.write(printYear(year, knowledge, pageOf(options)));
    });
};

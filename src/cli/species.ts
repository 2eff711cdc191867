import { Command } from 'commander';
import colors from 'picocolors';
import type { Advisor } from '../advisor.js';
import { SparebudError } from '../knowledge/error.js';
import type { Knowledge, Species } from '../knowledge/knowledge.js';
import { traitText } from '../knowledge/traitText.js';
import { inUnits, type Units } from './page/inUnits.js';
import { unitsOption } from './page/unitsOption.js';

const sheet = (species: Species, knowledge: Knowledge, units: Units): string => {
  const lines = [`${colors.bold(species.name)}${species.author === undefined ? '' : ` ${species.author}`}  (${species.id})`];
  for (const [language, names] of Object.entries(species.commonNames)) lines.push(`  ${language}: ${names.join(', ')}`);
  if (species.synonyms.length > 0) lines.push(`  synonyms: ${species.synonyms.join(', ')}`);
  if (species.parent !== undefined) lines.push(`  parent: ${species.parent}${species.rank === 'member' ? ', which answers for it' : ''}`);
  lines.push('');
  for (const [name, trait] of Object.entries(species.traits)) {
    lines.push(`  ${name.padEnd(28)} ${inUnits(traitText(trait, knowledge.facts[`species.${name}`]?.unit), units)}`);
    lines.push(colors.dim(`  ${''.padEnd(28)} ${trait.level}: ${trait.sources.map((id) => `${id}${knowledge.sources[id]?.from === 'memory' ? ' (recalled)' : ''}`).join(', ')}${trait.note === undefined ? '' : `; ${inUnits(trait.note, units)}`}`));
  }
  return `${lines.join('\n')}\n`;
};

/** `sparebud species`: the list of all, or the traits of one with their sources. */
export const speciesCommand = (advisor: Advisor, noted: () => Promise<Knowledge>): Command =>
  new Command('species')
    .description('list the species, or show the traits of one with their sources')
    .argument('[name]', 'id, accepted name, synonym or common name')
    .addOption(unitsOption())
    .option('--json', 'print as JSON')
    .addHelpText('after', '\nExample:\n  sparebud species "trident maple"')
    .action(async (name: string | undefined, options: { readonly json?: true; readonly units: Units }) => {
      const { knowledge } = advisor;
      if (name === undefined) {
        for (const species of Object.values(knowledge.species)) {
          if (options.json === true) process.stdout.write(`${JSON.stringify({ id: species.id, name: species.name, rank: species.rank, parent: species.parent ?? null })}\n`);
          else process.stdout.write(`${species.id.padEnd(38)} ${species.rank.padEnd(7)} ${(species.commonNames['en'] ?? [species.name]).join(', ')}\n`);
        }
        return;
      }
      const found = advisor.findSpecies(name);
      if (found.kind === 'ambiguous') throw new SparebudError([{ code: 'ambiguous-species', path: 'species', message: `\`${name}\` may be several species`, help: `say which: ${found.species.map((each) => each.name).join(', ')}` }]);
      if (found.kind === 'unknown') throw new SparebudError([{ code: 'unknown-species', path: 'species', message: `unknown species \`${name}\``, help: found.near.length > 0 ? `did you mean ${found.near.join(' or ')}?` : 'see `sparebud species` for the list' }]);
      const species = (await noted()).species[found.species.id]!;
      process.stdout.write(options.json === true ? `${JSON.stringify(species, undefined, 2)}\n` : sheet(species, knowledge, options.units));
    });

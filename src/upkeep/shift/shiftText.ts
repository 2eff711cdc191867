import { stringify } from 'yaml';
import { answerText } from './answer.js';
import { byRule, bySpecies, type ShiftGroup } from './groupShift.js';
import type { Proposal } from '../corpus.js';
import type { Shift, Shifted } from './shiftBetween.js';

const most = { species: 12, moves: 6 };

const listed = (entries: readonly (readonly [string, number])[], limit: number): string =>
  [...entries.slice(0, limit).map(([id, count]) => `${id} ${count}`), ...(entries.length > limit ? [`and ${entries.length - limit} more`] : [])].join(', ');

const proposalText = ({ tree, operation, date, where }: Proposal): string => stringify({ tree, operation, date, where }, { collectionStyle: 'flow', lineWidth: 0 }).trim();

const rulesOf = ({ before, after, rules }: Shifted): readonly string[] => rules.map((rule) => `${rule}: ${before.rules[rule] ?? 'does not fire'} -> ${after.rules[rule] ?? 'does not fire'}`);

const heading = (shift: Shift): string => {
  const [changed, all] = [shift.shifted.length, shift.proposals];
  const verdicts = shift.shifted.filter(({ before, after }) => before.verdict !== after.verdict).length;
  return changed === 0 ? `no answer changes, of ${all}` : `${changed} of ${all} answers ${changed === 1 ? 'changes' : 'change'} (${((100 * changed) / all).toFixed(2)} %), ${verdicts} of them the verdict, ${changed - verdicts} only how settled it is`;
};

const asides = (shift: Shift): readonly string[] => [
  ...(shift.rules.length === 0 ? [] : [`rules that decide otherwise, came or went: ${shift.rules.join(', ')}`]),
  ...(shift.species.length === 0 ? [] : [`species whose traits differ: ${shift.species.join(', ')}`]),
  ...(Object.keys(shift.newly).length === 0 ? [] : [`answered only now: ${listed(Object.entries(shift.newly), most.species)}`]),
  ...(Object.keys(shift.noLonger).length === 0 ? [] : [`no longer answered: ${listed(Object.entries(shift.noLonger), most.species)}`]),
  ...(Object.keys(shift.otherReasons).length === 0 ? [] : [`same answer on other grounds: ${listed(Object.entries(shift.otherReasons).sort(([, a], [, b]) => b - a), most.species)}`]),
];

const moves = (group: ShiftGroup): readonly string[] => group.moves.slice(0, most.moves).map(({ from, to, answers }) => `${from} -> ${to}: ${answers}`);

/** What changes, for a terminal. */
export const shiftText = (shift: Shift, against: string): string => {
  const lines = [`against ${against}: ${heading(shift)}`, ...asides(shift).map((line) => `  ${line}`)];
  for (const group of byRule(shift)) {
    lines.push('', `${group.id}: ${group.answers} answer${group.answers === 1 ? '' : 's'}`, ...moves(group).map((move) => `  ${move}`), `  species: ${listed(group.across, most.species)}`);
    for (const each of group.examples) lines.push(`  ${proposalText(each.proposal)}`, `    before  ${answerText(each.before)}`, `    after   ${answerText(each.after)}`, ...rulesOf(each).map((rule) => `    ${rule}`));
  }
  const species = bySpecies(shift);
  if (species.length > 0) lines.push('', 'by species:', ...species.map((group) => `  ${group.id.padEnd(36)} ${String(group.answers).padStart(6)}  ${listed(group.across, 3)}`));
  return `${lines.join('\n')}\n`;
};

/** What changes, as a comment on a pull request. */
export const shiftMarkdown = (shift: Shift, against: string): string => {
  const lines = [`## Which answers change, against \`${against}\``, '', `${heading(shift)[0]!.toUpperCase()}${heading(shift).slice(1)}.`, '', ...asides(shift).map((line) => `* ${line}`)];
  const rules = byRule(shift);
  if (rules.length > 0) lines.push('', '| rule | answers | from | to | species |', '| --- | ---: | --- | --- | --- |');
  for (const group of rules) {
    group.moves.slice(0, most.moves).forEach(({ from, to, answers }, i) => lines.push(`| ${i === 0 ? `\`${group.id}\`` : ''} | ${answers} | ${from} | ${to} | ${i === 0 ? listed(group.across, most.species) : ''} |`));
  }
  for (const group of rules) {
    lines.push('', `<details><summary><code>${group.id}</code>: examples</summary>`, '');
    for (const each of group.examples) lines.push('```yaml', proposalText(each.proposal), '```', '', `* before: ${answerText(each.before)}`, `* after: ${answerText(each.after)}`, ...rulesOf(each).map((rule) => `* \`${rule}\``), '');
    lines.push('</details>');
  }
  const species = bySpecies(shift);
  if (species.length > 0) {
    lines.push('', `<details><summary>By species (${species.length})</summary>`, '', '| species | answers | rules |', '| --- | ---: | --- |', ...species.map((group) => `| ${group.id} | ${group.answers} | ${listed(group.across, 3)} |`), '', '</details>');
  }
  return `${lines.join('\n')}\n`;
};

/** What changes, for a program. */
export const shiftJson = (shift: Shift, against: string): string =>
  `${JSON.stringify({ against, proposals: shift.proposals, changed: shift.shifted.length, verdicts: shift.shifted.filter(({ before, after }) => before.verdict !== after.verdict).length, rules: shift.rules, species: shift.species, newly: shift.newly, noLonger: shift.noLonger, otherReasons: shift.otherReasons, byRule: byRule(shift), bySpecies: bySpecies(shift) }, undefined, 1)}\n`;

import { SparebudError } from '../../knowledge/error.js';
import { didYouMean } from '../../knowledge/nearest.js';
import type { FactWord, Rule } from '../../knowledge/knowledge.js';
import type { Parts } from '../../knowledge/parts.js';
import { helpMark, todo } from '../house/unfinished.js';
import { flowText } from '../mend/flowText.js';
import { factLine } from './factLine.js';
import type { NewFile } from './newSpecies.js';

/** Facts that a rule on this work is likely to look at: what such a proposal tells, then what rules on it look at, most used first. */
const likely = (operations: readonly string[], siblings: readonly Omit<Rule, 'id'>[], parts: Parts): readonly FactWord[] => {
  const parameters = operations.flatMap((id) => parts.operations[id]!.parameters.map((name) => `operation.${name}`));
  const told = Object.values(parts.facts).filter((fact) => fact.given !== undefined && parameters.includes(fact.given));
  const counts = new Map<string, number>();
  for (const { when, unless = [] } of siblings) {
    const named = JSON.stringify([when, unless.map((reason) => reason.when)]).match(/"[a-zA-Z]+\.[a-zA-Z.]+"(?=:)/g) ?? [];
    for (const fact of new Set(named.map((quoted) => quoted.slice(1, -1)))) counts.set(fact, (counts.get(fact) ?? 0) + 1);
  }
  const used = [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1)).map(([fact]) => parts.facts[fact]).filter((fact) => fact !== undefined);
  return [...new Set([...told, ...used])].slice(0, 30);
};

/**
 * A rule file with its places to fill in, the facts that rules on this work look at, and how conditions are written.
 *
 * @param id theme and name: `roots/too-late`
 * @throws SparebudError where the rule is there already, or an operation is not known
 */
export const newRule = (id: string, operations: readonly string[], verdict: string, parts: Parts): NewFile => {
  const path = `rules/${id}.yaml`;
  if (!/^[a-z0-9-]+\/[a-z0-9-]+$/.test(id)) throw new SparebudError([{ code: 'bad-pattern', path: 'id', message: `\`${id}\` is no id of a rule`, help: 'write theme/name in small letters, such as roots/too-late' }]);
  if (parts.rules.has(id)) throw new SparebudError([{ code: 'duplicate', path: 'id', message: `\`${id}\` is there already`, help: `mend ${path}` }]);
  if (operations.length === 0) throw new SparebudError([{ code: 'missing', path: 'operations', message: 'no operation is named', help: `say on which work it is with --operations: ${Object.keys(parts.operations).join(', ')}` }]);
  const unknown = operations.find((operation) => !Object.hasOwn(parts.operations, operation));
  if (unknown !== undefined) throw new SparebudError([{ code: 'unknown-operation', path: 'operations', message: `\`${unknown}\` is not an operation`, help: didYouMean(unknown, Object.keys(parts.operations)) ?? `accepted: ${Object.keys(parts.operations).join(', ')}` }]);
  const siblings = ([...parts.rules.values()] as unknown as readonly Omit<Rule, 'id'>[]).filter((rule) => rule.operations !== 'all' && rule.operations.some((operation) => operations.includes(operation)));
  const lines = [
    '# yaml-language-server: $schema=../../.editor/rule.schema.json',
    `${helpMark} Write in the place of each TODO; \`sparebud vet\` says what is left. Then \`sparebud vet --mend\` drafts the examples and takes these lines away.`,
    `title: ${todo} what goes wrong, in at most eight words`,
    `operations: ${flowText(operations)}`,
    `${helpMark} risky: it can work, at a cost or on a condition that the finding names. advise-against: likely to lose the branch, the tree or years, or plainly worse than another time or way that costs nothing.`,
    `verdict: ${verdict}`,
    `${helpMark} What is at stake: tree, branch, flowers, time or looks.`,
    'costs: tree',
    'when:',
    `  ${helpMark} All must hold. A fact stands beside a value, a list of values, or a comparison:`,
    `  ${helpMark} - season.phase: [extending, hardened-off]`,
    `  ${helpMark} - roots.shareRemoved: { above: 0.3 }                        (above, below, atLeast, atMost, between: [a, b], not)`,
    `  ${helpMark} - roots.shareRemoved: { above: { trait: roots.maxRemoved } } (a limit that differs by species; also times and plus)`,
    `  ${helpMark} - any: [ { tree.vigour: weak }, { tree.health: ailing } ]    (one of them; all: nests too)`,
    `  ${helpMark} Facts that rules on this work look at (all are in shared/facts.yaml):`,
    ...likely(operations, siblings, parts).map((fact) => `  ${helpMark}   ${fact.id}: ${factLine(fact, parts.facts)}`),
    `  - ${todo} a condition`,
    `${helpMark} An exception lifts the rule, with a reason of its own: unless: [ { when: [ … ], because: …, sources: [ … ] } ]`,
    `because: ${todo} at most two sentences, the mechanism first, then what it means for {species.name}, with its own numbers in braces`,
    `${helpMark} What to do in its place, if anything: instead: { wait: bud-swell } or { set: { … } } or { do: { op: … } }`,
    `${helpMark} Ids of shared/sources.yaml, common-practice or from-memory. Rules on this work cite: ${[...new Set(siblings.flatMap((rule) => rule.sources))].slice(0, 12).join(', ')}`,
    `sources: [${todo}]`,
    'examples:',
    `  - ${todo} leave this line, write the rest, run sparebud vet --mend, and confirm the drafts`,
    '',
  ];
  return { path, text: lines.join('\n') };
};

import { strengthOf } from '../../advice/findings.js';
import type { Knowledge, SourceWord, Species, Trait } from '../../knowledge/knowledge.js';

/** Where we differ from a published table, and why. */
export interface Disagreement {
  readonly table: string;
  readonly id: string;
  readonly kind: string;
  readonly reason: string;
  readonly better: readonly string[];
}

const origins = ['read', 'memory', 'practice'] as const;

/** The best that something rests on: read before recalled, recalled before practice. */
const originOf = (sources: readonly SourceWord[]): (typeof origins)[number] => origins.find((origin) => sources.some(({ from }) => from === origin)) ?? 'practice';

const count = (values: readonly string[]): readonly (readonly [string, number])[] => {
  const counts = new Map<string, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].sort(([a, m], [b, n]) => n - m || (a < b ? -1 : 1));
};

const table = (head: string, of: string, values: readonly string[]): string =>
  [`| ${head} | ${of} | share |`, '| --- | ---: | ---: |', ...count(values).map(([value, number]) => `| ${value} | ${number} | ${((100 * number) / values.length).toFixed(1)} % |`)].join('\n');

/** Traits where they are written, not where they are handed down. */
const ownTraits = (species: readonly Species[]): readonly (readonly [Species, string, Trait])[] =>
  species.flatMap((each) => Object.entries(each.traits).flatMap(([name, trait]): readonly (readonly [Species, string, Trait])[] => (trait.level === each.id ? [[each, name, trait]] : [])));

/** What the catalogue and the rules stand on, as Markdown: by origin, strength and setting, and the disagreements that are kept. */
export const evidencePage = (knowledge: Knowledge, disagreements: readonly Disagreement[]): string => {
  const wordsOf = (ids: readonly string[]): readonly SourceWord[] => ids.flatMap((id) => knowledge.sources[id] ?? []);
  const rules = Object.values(knowledge.rules);
  const traits = ownTraits(Object.values(knowledge.species));
  const studied = (ids: readonly string[]): readonly string[] => [...new Set(wordsOf(ids).filter(({ from }) => from === 'read').map((source) => source.studied))];
  const either = traits.filter(([, , trait]) => trait.either !== undefined);
  const cell = (text: string): string => text.replaceAll('|', '\\|');
  return `# What it stands on

Counted from species/, rules/ and shared/sources.yaml. \`npx vitest run --config .config/vitest.config.ts tests/upkeep/site/evidence.test.ts -u\` writes this page, and the test fails while it lags behind.

A source is **read** (the text was before us), **memory** (recalled, and said so), or **practice** (the common practice of growers). A rule or trait with several counts by the best of them.

## Rules

${rules.length} rules. By what they rest on:

${table('rests on', 'rules', rules.map(({ sources }) => originOf(wordsOf(sources))))}

By the strength that an answer shows: *strong* is measured and published; *fair* is several handbooks, or measured elsewhere than in pots; *weak* is one opinion, or practice.

${table('strength', 'rules', rules.map(({ sources }) => strengthOf(wordsOf(sources))))}

By the setting in which what was read was studied (a rule may rest on several):

${table('setting', 'rules', rules.flatMap(({ sources }) => studied(sources)))}

## Traits

${traits.length} traits, counted where they are written and not where they are handed down.

${table('rests on', 'traits', traits.map(([, , { sources }]) => originOf(wordsOf(sources))))}

${table('strength', 'traits', traits.map(([, , { sources }]) => strengthOf(wordsOf(sources))))}

${table('setting', 'traits', traits.flatMap(([, , { sources }]) => studied(sources)))}

## Where sources disagree

### In the catalogue

Such a trait is judged as either, and the answer says that sources disagree.

| species | trait | either | why | sources |
| --- | --- | --- | --- | --- |
${either.map(([species, name, trait]) => `| ${species.id} | \`${name}\` | ${trait.either!.join(' or ')} | ${cell(trait.note ?? '')} | ${trait.sources.map((id) => `\`${id}\``).join(', ')} |`).join('\n')}

### With published tables

Kept, with a reason: *row* where the table looks wrong, *open* where we do not know better yet. [Agreement](agreement.md) has the figures.

| table | of | kind | reason | better |
| --- | --- | --- | --- | --- |
${disagreements.map(({ table: name, id, kind, reason, better }) => `| ${name} | ${id} | ${kind} | ${cell(reason)} | ${better.map((source) => `\`${source}\``).join(', ')} |`).join('\n')}
`;
};

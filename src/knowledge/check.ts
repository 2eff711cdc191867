import type { Issue, IssueCode } from './error.js';
import { chainOf } from './flatten.js';
import { plainName } from './findSpecies.js';
import { didYouMean } from './nearest.js';
import type { Parts } from './parts.js';

type Members = Readonly<Record<string, unknown>>;
type Path = readonly (string | number)[];

/** An issue in a file of the knowledge, by the member it is about. */
export interface Fault extends Issue {
  readonly file: string;
  readonly at: Path;
}

const fault = (file: string, at: Path, code: IssueCode, message: string, help: string | undefined): Fault => ({ code, file, at, path: at.join('.'), message, ...(help === undefined ? {} : { help }) });

const sourcesOf = (written: Members): readonly string[] => [...((written['sources'] as readonly string[] | undefined) ?? []), ...(written['source'] === undefined ? [] : [written['source'] as string])];

const unknownSources = (file: string, at: Path, written: Members, parts: Parts): readonly Fault[] =>
  sourcesOf(written)
    .filter((id) => !Object.hasOwn(parts.sources, id))
    .map((id) => fault(file, [...at, 'sources' in written ? 'sources' : 'source'], 'unknown-source', `unknown source \`${id}\``, didYouMean(id, Object.keys(parts.sources)) ?? 'add it to shared/sources.yaml'));

const speciesFaults = (parts: Parts, fileOf: (id: string) => string): readonly Fault[] => {
  const faults: Fault[] = [];
  const synonyms = new Map<string, string>();
  const needed = Object.values(parts.facts).filter((fact) => fact.id.startsWith('species.') && fact.optional !== true).map((fact) => fact.id.slice('species.'.length));
  for (const [id, { rank, written }] of parts.species) {
    const file = fileOf(id);
    const parent = written['parent'] as string | undefined;
    const traits = (written['traits'] as Record<string, Members> | undefined) ?? {};
    if (parent !== undefined && !parts.species.has(parent)) faults.push(fault(file, ['parent'], 'unknown-parent', `unknown parent \`${parent}\``, didYouMean(parent, parts.species.keys()) ?? 'name a file of species/groups or species/genera'));
    else if (parent === undefined && rank !== 'group') faults.push(fault(file, ['name'], 'missing', `\`parent\` is missing`, 'name the genus or group that it differs from'));
    else if (parent !== undefined) {
      const chain = chainOf(id, parts.species);
      const top = parts.species.get(chain[0]!)!.written['parent'] as string | undefined;
      if (top !== undefined && chain.includes(top)) faults.push(fault(file, ['parent'], 'circle', `its parents go round in a circle: ${[...chain].reverse().join(' <- ')}`, 'let the chain end at a group'));
    }
    if (rank === 'group') for (const name of needed.filter((each) => !Object.hasOwn(traits, each))) faults.push(fault(file, ['traits'], 'incomplete', `the group lacks the trait \`${name}\``, 'a group gives every trait that is not optional'));
    if (rank === 'taxon' && Object.keys(traits).length === 0 && written['asParent'] === undefined) faults.push(fault(file, ['name'], 'incomplete', 'nothing differs from its parent', 'give the traits that differ, or say why none does in `asParent`'));
    for (const [name, trait] of Object.entries(traits)) {
      if (sourcesOf(trait).length === 0) faults.push(fault(file, ['traits', name], 'missing', `the trait \`${name}\` has no source`, 'add `source:`, a published one or common-practice'));
      faults.push(...unknownSources(file, ['traits', name], trait, parts));
    }
    const names: readonly [string, Members, Path][] = [[id, written, []], ...Object.entries((written['members'] as Record<string, Members> | undefined) ?? {}).map(([member, names]): [string, Members, Path] => [member, names, ['members', member]])];
    for (const [owner, entry, at] of names) {
      if (at.length > 0 && parts.species.has(owner)) faults.push(fault(file, at, 'duplicate', `\`${owner}\` has a file of its own`, 'take it out of `members`'));
      ((entry['synonyms'] as readonly string[] | undefined) ?? []).forEach((synonym, i) => {
        const other = synonyms.get(plainName(synonym));
        if (other !== undefined && other !== owner) faults.push(fault(file, [...at, 'synonyms', i], 'duplicate', `\`${synonym}\` is a synonym of \`${other}\` too`, 'a synonym belongs to one species'));
        synonyms.set(plainName(synonym), owner);
      });
    }
  }
  for (const [id, { written }] of parts.species) {
    const other = synonyms.get(plainName(written['name'] as string));
    if (other !== undefined && other !== id) faults.push(fault(fileOf(id), ['name'], 'duplicate', `\`${written['name'] as string}\` is a synonym of \`${other}\``, 'take the synonym out, or merge the files'));
  }
  return faults;
};

const placeholders = (text: string): readonly string[] => [...text.matchAll(/\{([^}]+)\}/g)].map((match) => match[1]!);

const ruleFaults = (parts: Parts, fileOf: (id: string) => string): readonly Fault[] => {
  const faults: Fault[] = [];
  for (const [id, written] of parts.rules) {
    const file = fileOf(id);
    faults.push(...unknownSources(file, [], written, parts));
    const unless = (written['unless'] as readonly Members[] | undefined) ?? [];
    unless.forEach((reason, i) => faults.push(...unknownSources(file, ['unless', i], reason, parts)));
    if ((written['title'] as string).split(/\s+/).length > 8) faults.push(fault(file, ['title'], 'too-large', 'the title has more than eight words', 'say what goes wrong in at most eight'));
    for (const other of (written['covers'] as readonly string[] | undefined) ?? []) {
      if (!parts.rules.has(other)) faults.push(fault(file, ['covers'], 'unknown-name', `unknown rule \`${other}\``, didYouMean(other, parts.rules.keys())));
    }
    for (const name of placeholders(written['because'] as string)) {
      if (name !== 'species.name' && !Object.hasOwn(parts.facts, name)) faults.push(fault(file, ['because'], 'unknown-fact', `unknown fact \`${name}\` in the text`, didYouMean(name, Object.keys(parts.facts)) ?? 'use {species.name} or a fact of shared/facts.yaml'));
    }
    ((written['examples'] as readonly { readonly given: Members }[] | undefined) ?? []).forEach((example, i) => {
      const species = example.given['species'] as string | undefined;
      if (species !== undefined && !parts.species.has(species)) faults.push(fault(file, ['examples', i, 'given', 'species'], 'unknown-species', `unknown species \`${species}\``, didYouMean(species, parts.species.keys()) ?? 'name a file of species/'));
    });
  }
  return faults;
};

const wordFaults = (parts: Parts): readonly Fault[] => {
  const faults: Fault[] = [];
  const words = (file: string, id: string, key: string): void => {
    if (!Object.hasOwn(parts.wording, key)) faults.push(fault(file, [id], 'missing', `no wording \`${key}\``, 'add it to shared/wording/en.yaml'));
  };
  for (const fact of Object.values(parts.facts)) {
    if (fact.ask !== undefined) words('shared/facts.yaml', fact.id, `ask.${fact.ask}`);
    if (fact.id.startsWith('species.')) continue;
    const ways = [fact.assume !== undefined, fact.ask !== undefined].filter(Boolean).length;
    if (ways === 2) faults.push(fault('shared/facts.yaml', [fact.id], 'not-allowed', `\`${fact.id}\` is both assumed and asked for`, 'keep one'));
    if (ways === 0 && fact.from === undefined) faults.push(fault('shared/facts.yaml', [fact.id], 'incomplete', `\`${fact.id}\` is neither assumed, asked for nor worked out`, 'add `assume`, `ask` or `from`'));
    for (const input of fact.from ?? []) if (!Object.hasOwn(parts.facts, input)) faults.push(fault('shared/facts.yaml', [fact.id, 'from'], 'unknown-fact', `unknown fact \`${input}\``, didYouMean(input, Object.keys(parts.facts))));
  }
  for (const { id, group } of Object.values(parts.operations)) words('shared/operations.yaml', id, `group.${group}`);
  for (const id of Object.keys(parts.cautions)) words('shared/cautions.yaml', id, `caution.${id}`);
  for (const id of Object.keys(parts.followUps)) words('shared/following.yaml', id, `after.${id}`);
  for (const chore of Object.values(parts.chores)) {
    words('shared/chores.yaml', chore.id, `due.${chore.id}`);
    for (const fact of chore.told) words('shared/chores.yaml', chore.id, `untold.${fact}`);
    faults.push(...unknownSources('shared/chores.yaml', ['chores', chore.id], chore as unknown as Members, parts));
  }
  for (const [file, entries] of [['shared/cautions.yaml', parts.cautions], ['shared/following.yaml', parts.followUps]] as const) {
    for (const [id, entry] of Object.entries(entries)) faults.push(...unknownSources(file, [id], entry as unknown as Members, parts));
  }
  for (const [term, weighed] of Object.entries(parts.aims.terms ?? {})) {
    for (const key of [`keepers.${term}`, `keepers.term.${term}`]) words('shared/aims.yaml', term, key);
    faults.push(...unknownSources('shared/aims.yaml', ['terms', term], weighed as unknown as Members, parts));
  }
  parts.alerts.forEach((alert, i) => faults.push(...unknownSources('shared/alerts.yaml', [i], alert as unknown as Members, parts)));
  const aliases = new Map<string, string>();
  for (const operation of Object.values(parts.operations)) {
    for (const [alias, set] of Object.entries(operation.aliases)) {
      for (const name of Object.keys(set).filter((each) => !operation.parameters.includes(each))) {
        faults.push(fault('shared/operations.yaml', [operation.id, 'aliases', alias, name], 'unknown-parameter', `\`${name}\` of the alias \`${alias}\` is no parameter of \`${operation.id}\``, didYouMean(name, operation.parameters) ?? `accepted: ${operation.parameters.join(', ')}`));
      }
      const other = aliases.get(alias) ?? (Object.hasOwn(parts.operations, alias) ? alias : undefined);
      if (other !== undefined) faults.push(fault('shared/operations.yaml', [operation.id, 'aliases', alias], 'duplicate', `\`${alias}\` is an alias of \`${other}\` too`, 'an alias belongs to one operation'));
      aliases.set(alias, operation.id);
    }
  }
  return faults;
};

/** What does not hold together between files: sources, parents, names, texts. What one file alone can get wrong is its schema's to find. */
export const crossCheck = (parts: Parts, speciesFile: (id: string) => string, ruleFile: (id: string) => string): readonly Fault[] => [
  ...wordFaults(parts),
  ...speciesFaults(parts, speciesFile),
  ...ruleFaults(parts, ruleFile),
];

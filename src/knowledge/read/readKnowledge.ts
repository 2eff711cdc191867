import { existsSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { type Validator, validatorOf } from '../../contract/validatorOf.js';
import type { Aims } from '../aims.js';
import { crossCheck, type Fault } from '../check.js';
import { type Issue, SparebudError } from '../error.js';
import { flatten } from '../flatten.js';
import type { Alert, Caution, FollowUp, Growing, Knowledge, PhaseWord, SourceWord } from '../knowledge.js';
import type { Parts, WrittenSpecies } from '../parts.js';
import { pathOf, schemaIssues } from '../schemaIssues.js';
import { packageFile } from './packageFile.js';
import { readFolder } from './readFolder.js';
import { readEntries, readChores, readFacts, readOperations } from './readWords.js';
import type { YamlFile } from './readYaml.js';

/** Knowledge as read from a folder: what it comes to, and all that is wrong with it, each with file, line and column. */
export interface ReadKnowledge {
  readonly parts: Parts;
  readonly issues: readonly Issue[];
  readonly files: ReadonlyMap<string, YamlFile>;
}

const validators = new Map<string, Validator>();

const schemaFile = (name: string): Readonly<Record<string, object>> => ({ [`${name}.schema.json`]: JSON.parse(readFileSync(packageFile(`schemas/${name}.schema.json`), 'utf8')) as object });

const fileValidator = (name: string): Validator => {
  const kept = validators.get(name);
  if (kept !== undefined) return kept;
  /* What others refer to stands in the schema of rules. */
  const made = validatorOf(`${name}.schema.json`, { ...schemaFile('rule'), ...schemaFile(name) });
  validators.set(name, made);
  return made;
};

const located = (file: YamlFile | undefined, issue: Issue, at: readonly (string | number)[]): Issue => {
  const { line, col } = file?.at(at) ?? { line: 1, col: 1 };
  return { ...issue, line, col };
};

const checkFile = (file: YamlFile, schema: string): readonly Issue[] => {
  if (file.issues.length > 0) return file.issues;
  return fileValidator(schema)(file.data).flatMap((error) => schemaIssues([error], file.file).map((issue) => {
    const inner = error.keyword === 'additionalProperties' ? [String(error.params['additionalProperty'])] : [];
    return located(file, issue, [...pathOf(error.instancePath), ...inner]);
  })).filter((issue, i, all) => all.findIndex((other) => other.message === issue.message && other.line === issue.line) === i);
};

/** The conditions of cautions and follow-ups need none where the operation says it all. */
const withWhen = <Entry extends { readonly when?: unknown }>(entries: Readonly<Record<string, Entry>>): Readonly<Record<string, Entry>> =>
  Object.fromEntries(Object.entries(entries).map(([id, entry]) => [id, { when: [], ...entry }]));

/** The entries of a file that is a list; none where it is anything else, which its schema says. */
const listIn = (file: YamlFile | undefined): readonly Readonly<Record<string, unknown>>[] =>
  Array.isArray(file?.data) ? (file.data as readonly unknown[]).filter((entry): entry is Readonly<Record<string, unknown>> => typeof entry === 'object' && entry !== null) : [];

/** Reads a folder of knowledge (species/, rules/, shared/) with all that is wrong in it; throws nothing but on a folder that is not there. */
export const readParts = (root: string, version = '0.0.0'): ReadKnowledge => {
  if (!existsSync(join(root, 'shared'))) throw new SparebudError([{ code: 'missing', path: root, message: `no knowledge in ${root}: it has no folder \`shared\``, help: 'name a folder that holds species/, rules/ and shared/' }]);
  const files = new Map<string, YamlFile>();
  const issues: Issue[] = [];
  const take = (within: string, schemaOf: (name: string) => string | undefined): ReadonlyMap<string, YamlFile> => {
    const read = readFolder(root, within);
    for (const [name, file] of read) {
      files.set(file.file, file);
      const schema = schemaOf(name);
      issues.push(...(schema === undefined ? file.issues : checkFile(file, schema)));
    }
    return read;
  };
  const shared = take('shared', (name) => (name.startsWith('wording/') ? 'wording' : name === 'published' ? undefined : name));
  const species = new Map<string, WrittenSpecies>();
  const speciesFiles = new Map<string, string>();
  for (const [folder, rank] of [['groups', 'group'], ['genera', 'genus'], ['taxa', 'taxon']] as const) {
    for (const [id, file] of take(`species/${folder}`, () => 'species')) {
      if (speciesFiles.has(id)) issues.push({ code: 'duplicate', path: id, message: `\`${id}\` stands in ${speciesFiles.get(id)!} too`, help: 'one file a name', file: file.file, line: 1, col: 1 });
      speciesFiles.set(id, file.file);
      if (file.issues.length === 0) species.set(id, { rank, written: (file.data ?? {}) as WrittenSpecies['written'] });
    }
  }
  const rules = new Map<string, Readonly<Record<string, unknown>>>();
  const ruleFiles = new Map<string, string>();
  for (const [id, file] of take('rules', () => 'rule')) {
    ruleFiles.set(id, file.file);
    if (file.issues.length === 0) rules.set(id, (file.data ?? {}) as Readonly<Record<string, unknown>>);
  }
  const parts: Parts = {
    version,
    facts: readFacts(shared.get('facts')),
    operations: readOperations(shared.get('operations')),
    phases: readEntries<PhaseWord>(shared.get('phases')),
    sources: readEntries<SourceWord>(shared.get('sources')),
    species,
    rules,
    alerts: (listIn(shared.get('alerts')) as readonly (Omit<Alert, 'sources'> & { readonly source?: string; readonly sources?: readonly string[] })[]).map(({ source, ...alert }) => ({ ...alert, sources: alert.sources ?? (source === undefined ? [] : [source]) })),
    cautions: withWhen(readEntries<Caution>(shared.get('cautions'))),
    followUps: withWhen(readEntries<FollowUp>(shared.get('following'))),
    ...readChores(shared.get('chores')),
    growing: (shared.get('growing')?.data ?? {}) as Growing,
    aims: (shared.get('aims')?.data ?? { terms: {}, styles: {} }) as Aims,
    renames: listIn(shared.get('renames')) as Parts['renames'],
    wording: (shared.get('wording/en')?.data ?? {}) as Parts['wording'],
  };
  if (issues.length === 0) {
    const faults = crossCheck(parts, (id) => speciesFiles.get(id) ?? '', (id) => ruleFiles.get(id) ?? '');
    issues.push(...faults.map(({ at, ...fault }: Fault) => located(files.get(fault.file), fault, at)));
  }
  return { parts, issues, files };
};

/**
 * Knowledge read from a folder of YAML.
 *
 * Use it on a server or in a script that keeps its own species and rules; a browser takes `sparebud/knowledge`.
 * @param root a folder that holds species/, rules/ and shared/
 * @throws SparebudError with every fault, each with file, line and column
 */
export const readKnowledge = (root: string, version?: string): Knowledge => {
  const { parts, issues } = readParts(root, version);
  if (issues.length > 0) throw new SparebudError(issues);
  return flatten(parts);
};

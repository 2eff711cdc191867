import { type Validator, validatorOf } from '../../contract/validatorOf.js';
import { crossCheck } from '../check.js';
import { type Issue, SparebudError } from '../error.js';
import { findSpecies } from '../findSpecies.js';
import { flatten } from '../flatten.js';
import type { Knowledge, SourceWord } from '../knowledge.js';
import { didYouMean } from '../nearest.js';
import type { Parts } from '../parts.js';
import { schemaIssues } from '../schemaIssues.js';
import { packSchema } from '../schemas/packSchema.js';
import { ruleSchema } from '../schemas/ruleSchema.js';
import { speciesSchema } from '../schemas/speciesSchema.js';
import { partsOf } from './partsOf.js';
import { plainCopy } from './plainCopy.js';

type Members = Readonly<Record<string, unknown>>;
type Named = Readonly<Record<string, Members>>;

/** A pack as its schema lets it through. */
interface Pack {
  readonly namespace: string;
  readonly version?: string;
  readonly sources?: Named;
  readonly species?: Named;
  readonly rules?: Named;
  readonly overrides?: { readonly traits?: Readonly<Record<string, Named | null>>; readonly rules?: Named; readonly silence?: readonly string[] };
}

const validators = new WeakMap<Knowledge['facts'], Validator>();

const validatorFor = ({ facts, operations }: Knowledge): Validator => {
  const kept = validators.get(facts);
  if (kept !== undefined) return kept;
  const made = validatorOf('pack.schema.json', { 'pack.schema.json': packSchema(), 'species.schema.json': speciesSchema(facts), 'rule.schema.json': ruleSchema(facts, operations) });
  validators.set(facts, made);
  return made;
};

const mapped = <From, To>(entries: Readonly<Record<string, From>> | undefined, to: (id: string, entry: From) => readonly [string, To]): readonly (readonly [string, To])[] => Object.entries(entries ?? {}).map(([id, entry]) => to(id, entry));

/**
 * Knowledge with the species and rules of a pack, under its namespace, and with what the pack says otherwise.
 *
 * Use it where an app has species or rules of its own; what an answer takes from the pack, it says. A base stays as it is, and several packs can be put on one after the other.
 * @param base such as `knowledge` of `sparebud/knowledge`
 * @param pack plain data as `schemas/pack.schema.json` describes it
 * @returns frozen knowledge, with a hash of its own
 * @throws SparebudError with all that is wrong, each with its path in the pack; `too-large` where it holds more than 200,000 values, 24 levels, or a text of more than 4,000 letters
 * @example
 * const ours = extendKnowledge(knowledge, {
 *   schema: 'pack/1', namespace: 'club',
 *   overrides: { traits: { 'acer-palmatum': { 'roots.killC': { is: -12, source: 'common-practice' } } } },
 * });
 */
export const extendKnowledge = (base: Knowledge, pack: unknown): Knowledge => {
  const plain = plainCopy(pack);
  const wrong = schemaIssues(validatorFor(base)(plain));
  if (wrong.length > 0) throw new SparebudError(wrong);
  const { namespace, version, sources, species, rules, overrides = {} } = plain as Pack;
  const issues: Issue[] = [];
  const own = (id: string): string => `${namespace}:${id}`;
  const marked = (traits: unknown): Named => Object.fromEntries(mapped(traits as Named | undefined, (name, trait) => [name, { ...trait, pack: namespace }]));
  const known = (path: string, kind: 'species' | 'rule', id: string, all: Readonly<Record<string, unknown>>): void => {
    if (!Object.hasOwn(all, id)) issues.push({ code: kind === 'rule' ? 'unknown-name' : 'unknown-species', path, message: `unknown ${kind} \`${id}\``, found: id, help: didYouMean(id, Object.keys(all)) ?? 'only what is there can be said otherwise' });
  };
  if (base.packs?.some((other) => other.namespace === namespace) === true) issues.push({ code: 'duplicate', path: 'namespace', message: `there is a pack \`${namespace}\` already`, found: namespace, help: 'give it another namespace' });

  const parts = partsOf(base);
  const places = new Map<string, string>();
  const speciesParts = new Map(parts.species);
  for (const [id, { members, traits, ...written }] of Object.entries(species ?? {})) {
    places.set(own(id), `species.${id}`);
    speciesParts.set(own(id), { rank: written['parent'] === undefined ? 'group' : 'taxon', written: { ...written, traits: marked(traits), members: Object.fromEntries(mapped(members as Named | undefined, (member, names) => [own(member), names])) } });
    for (const [at, { name }] of [[id, written] as const, ...mapped(members as Named | undefined, (member, names) => [`${id}.members.${member}`, names])]) {
      const found = findSpecies(base, name as string);
      if (found.kind !== 'unknown' && (found.kind === 'ambiguous' || found.by !== 'common-name')) issues.push({ code: 'duplicate', path: `species.${at}.name`, message: `there is a species \`${name as string}\` already`, found: name, help: 'say what differs in `overrides.traits`' });
    }
  }
  for (const [id, traits] of Object.entries(overrides.traits ?? {})) {
    known(`overrides.traits.${id}`, 'species', id, Object.fromEntries(parts.species));
    const there = speciesParts.get(id);
    if (there === undefined) continue;
    places.set(id, `overrides.traits.${id}`);
    speciesParts.set(id, { ...there, written: { ...there.written, traits: { ...(there.written['traits'] as Named), ...marked(traits ?? {}) } } });
  }
  const ruleParts = new Map(parts.rules);
  for (const [id, rule] of Object.entries(rules ?? {})) {
    places.set(own(id), `rules.${id}`);
    ruleParts.set(own(id), { ...rule, pack: namespace });
  }
  for (const [id, rule] of Object.entries(overrides.rules ?? {})) {
    known(`overrides.rules.${id}`, 'rule', id, base.rules);
    places.set(id, `overrides.rules.${id}`);
    ruleParts.set(id, { ...rule, pack: namespace });
  }
  (overrides.silence ?? []).forEach((id, i) => {
    known(`overrides.silence[${i}]`, 'rule', id, base.rules);
    ruleParts.delete(id);
  });

  const extended: Parts = {
    ...parts,
    sources: { ...parts.sources, ...Object.fromEntries(mapped(sources, (id, source) => [own(id), { ...source, id: own(id) } as unknown as SourceWord])) },
    species: speciesParts, rules: ruleParts,
    packs: [...(parts.packs ?? []), { namespace, ...(version === undefined ? {} : { version }), ...(overrides.silence === undefined ? {} : { silenced: overrides.silence }) }],
  };
  /* What the base got wrong is not the pack's. */
  const placeOf = (id: string): string => places.get(id) ?? '';
  for (const { file, at, ...fault } of crossCheck(extended, placeOf, placeOf)) {
    if (![...places.values()].includes(file)) continue;
    issues.push({ ...fault, path: [file, ...(file.startsWith('overrides.traits.') ? at.slice(1) : at)].join('.') });
  }
  if (issues.length > 0) throw new SparebudError(issues);
  return flatten(extended);
};

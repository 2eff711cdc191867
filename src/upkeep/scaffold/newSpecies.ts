import { SparebudError } from '../../knowledge/error.js';
import { chainOf } from '../../knowledge/flatten.js';
import { didYouMean } from '../../knowledge/nearest.js';
import type { Parts } from '../../knowledge/parts.js';
import { speciesId } from '../house/speciesId.js';
import { helpMark, todo } from '../house/unfinished.js';
import { flowText } from '../mend/flowText.js';
import { factLine } from './factLine.js';

type Members = Readonly<Record<string, unknown>>;

/** A new file, and what is known to stand elsewhere and has to go. */
export interface NewFile {
  readonly path: string;
  readonly text: string;
  /** A genus or species that lists the name among its members: it has to leave them. */
  readonly memberOf?: string;
}

const refuse = (code: 'duplicate' | 'unknown-parent', message: string, help: string): never => {
  throw new SparebudError([{ code, path: 'name', message, help }]);
};

/** Traits as the chain of parents says them, nearest first, each with the level that says it. */
const inherited = (parent: string, parts: Parts): ReadonlyMap<string, { readonly level: string; readonly trait: Members }> => {
  const traits = new Map<string, { level: string; trait: Members }>();
  for (const level of chainOf(parent, parts.species)) {
    for (const [name, trait] of Object.entries((parts.species.get(level)!.written['traits'] as Record<string, Members> | null | undefined) ?? {})) traits.set(name, { level, trait });
  }
  return traits;
};

/**
 * A species or genus file with what is known of it: names where a parent lists them, and what its parents say of each trait, to be uncommented where it differs.
 *
 * @param name the accepted name; one word is a genus
 * @throws SparebudError where the name is there already, or its parent is not known
 */
export const newSpecies = (name: string, asked: string | undefined, parts: Parts): NewFile => {
  const id = speciesId(name);
  const genus = id.split('-')[0]!;
  const folder = name.trim().includes(' ') ? 'taxa' : 'genera';
  if (parts.species.has(id)) refuse('duplicate', `\`${id}\` is there already`, 'mend its file in species/');
  const groups = [...parts.species].filter(([, { rank }]) => rank === 'group').map(([group]) => group);
  const parent = asked ?? (folder === 'taxa' && parts.species.has(genus) ? genus : refuse('unknown-parent', `no genus \`${genus}\` to stand under`, `name the group that it belongs to with --parent: ${groups.join(', ')}`));
  if (!parts.species.has(parent)) refuse('unknown-parent', `unknown parent \`${parent}\``, didYouMean(parent, parts.species.keys()) ?? `name a genus, or a group: ${groups.join(', ')}`);
  const listed = [...parts.species].find(([, { written }]) => Object.hasOwn((written['members'] as Members | undefined) ?? {}, id));
  const { name: accepted = name, author, commonNames = { en: [`${todo} the name that growers use`] }, synonyms } = ((listed?.[1].written['members'] as Record<string, Members> | undefined)?.[id] ?? {}) as Members;
  const above = inherited(parent, parts);
  const known = Object.values(parts.facts).filter((fact) => fact.id.startsWith('species.')).flatMap((fact): readonly string[] => {
    const trait = fact.id.slice('species.'.length);
    const told = above.get(trait);
    const open = (value: unknown): string => `  ${helpMark} ${trait}: ${flowText({ ...(told?.trait['either'] === undefined ? { is: value } : { either: told.trait['either'] }), source: todo })}`;
    if (told === undefined) return [`  ${helpMark} ${factLine(fact, parts.facts)}; no parent says`, open(todo)];
    /* What the parent goes by, and what it notes, was said of the parent: it is shown, and not handed on. */
    const { source, sources = [source], note } = told.trait as { readonly source?: string; readonly sources?: readonly (string | undefined)[]; readonly note?: string };
    return [`  ${helpMark} ${factLine(fact, parts.facts)}; ${told.level} says, by ${sources.join(', ')}${note === undefined ? '' : `: ${note}`}`, open(told.trait['is'])];
  });
  const lines = [
    '# yaml-language-server: $schema=../../.editor/species.schema.json',
    `name: ${flowText(accepted)}`,
    ...(author === undefined ? [] : [`author: ${flowText(author)}`]),
    `parent: ${parent}`,
    `commonNames: ${flowText(commonNames)}`,
    ...(synonyms === undefined ? [] : [`synonyms: ${flowText(synonyms)}`]),
    'traits:',
    `  ${helpMark} What \`${parent}\` passes on. Take \`${helpMark} \` away where this ${folder === 'taxa' ? 'species' : 'genus'} differs, put its own value, and name in the place of ${todo} where you have it from:`,
    `  ${helpMark} a published source (an id of shared/sources.yaml; \`sparebud new source\` adds one), common-practice, or from-memory. Where sources disagree: { either: [a, b], sources: [one, another] }.`,
    `  ${helpMark} Then \`sparebud vet --mend\` takes these lines away, and \`sparebud shift\` shows what changes.`,
    ...known,
    '',
  ];
  return { path: `species/${folder}/${id}.yaml`, text: lines.join('\n'), ...(listed === undefined ? {} : { memberOf: listed[0] }) };
};

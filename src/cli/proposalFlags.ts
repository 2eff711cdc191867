import { type Command, Option } from 'commander';
import { SparebudError } from '../knowledge/error.js';
import type { FactWord, Knowledge } from '../knowledge/knowledge.js';
import { measured } from './measured.js';

/** A flag of the command line and the place in a proposal that it fills. */
interface Flag {
  readonly name: string;
  readonly path: string;
  readonly help: string;
  readonly choices?: readonly string[];
}

const kebab = (name: string): string => name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);

const factFlag = (fact: FactWord): Flag | undefined => {
  const match = /^(operation|tree)\.(?:aim\.|trunk\.)?(\w+)$/.exec(fact.given ?? '');
  if (match === null || fact.id === 'tree.species' || fact.given === 'tree.log' || fact.given === 'tree.structure') return undefined;
  const name = kebab(fact.given!.startsWith('tree.trunk.') ? `trunk-${match[2]!}` : match[2]!);
  return { name, path: fact.given!, help: fact.unit === undefined ? fact.meaning : `${fact.meaning} (${fact.unit})`, ...(fact.values === undefined ? {} : { choices: fact.values }) };
};

/** What is told otherwise than as a fact: days as dates, styles by name, places. */
const others = (knowledge: Knowledge): readonly Flag[] => [
  { name: 'date', path: 'date', help: 'the day, YYYY-MM-DD (today where it is not given)' },
  { name: 'place', path: 'where.place', help: 'id of a bundled station, see `sparebud places`' },
  { name: 'latitude', path: 'where.latitude', help: 'degrees, north is positive' },
  { name: 'longitude', path: 'where.longitude', help: 'degrees, east is positive' },
  { name: 'elevation-m', path: 'where.elevationM', help: 'above the sea (m)' },
  { name: 'last-frost', path: 'where.lastFrost', help: 'usual last frost, MM-DD' },
  { name: 'first-frost', path: 'where.firstFrost', help: 'usual first frost, MM-DD' },
  { name: 'region', path: 'where.region', help: 'country or state, such as BE or US-MN' },
  { name: 'rootstock', path: 'tree.rootstock', help: 'species whose roots it stands on' },
  { name: 'last-repotted', path: 'tree.lastRepotted', help: 'when its roots were last cut in a repotting: YYYY, YYYY-MM or YYYY-MM-DD, or never' },
  { name: 'style', path: 'tree.aim.style', help: 'the style that is aimed at', choices: Object.keys(knowledge.aims.styles) },
  { name: 'branch', path: 'operation.branch', help: 'id of the branch' },
];

const groups: Readonly<Record<string, string>> = { tree: 'The tree:', operation: 'The operation, each with the parameters that `sparebud operations` lists:' };

const flagsOf = (knowledge: Knowledge): readonly Flag[] => {
  const flags = [...others(knowledge), ...Object.values(knowledge.facts).map(factFlag).filter((flag) => flag !== undefined)];
  return flags.filter((flag, i) => flags.findIndex((other) => other.name === flag.name) === i);
};

/** Sets a member at a path such as `tree.vigour`, in a copy. */
export const setAt = (proposal: unknown, path: string, value: unknown): Record<string, unknown> => {
  const [step, ...rest] = path.split('.');
  const members = typeof proposal === 'object' && proposal !== null && !Array.isArray(proposal) ? (proposal as Record<string, unknown>) : {};
  return { ...members, [step!]: rest.length === 0 ? value : setAt(members[step!], rest.join('.'), value) };
};

const dated = /^\d{4}(-\d\d){0,2}$|^\d\d-\d\d$/;

const counted = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;
const word = /^(?!(?:true|false|null)$)[a-z]+(?:-[a-z]+)*$/;

/** The unit that a member of a proposal takes. */
const unitAt = (path: string, { facts }: Knowledge): string | undefined =>
  Object.values(facts).find((fact) => fact.given === path)?.unit ?? (path.endsWith('Mm') ? 'mm' : path.endsWith('elevationM') ? 'm' : undefined);

/** A value as typed: numbers, true and false are what they look like, a unit of its own is reckoned into the one that is taken, dates and words stay text; anything else is read as YAML, for which its parser is loaded. */
const typed = async (text: string, path: string, knowledge: Knowledge): Promise<unknown> => {
  if (dated.test(text) || word.test(text)) return text;
  if (counted.test(text)) return Number(text);
  const unit = unitAt(path, knowledge);
  const value = unit === undefined ? undefined : measured(text, unit);
  if (value !== undefined) return value;
  const { parse } = await import('yaml');
  return parse(text) as unknown;
};

/**
 * A proposal with what `path=value` says put into it.
 *
 * @param flag where it was written, such as `--set`
 * @throws SparebudError where it names no path or value
 */
export const withSetting = async (proposal: unknown, setting: string, flag: string, knowledge: Knowledge): Promise<Record<string, unknown>> => {
  const [, path, value] = /^\s*([^=\s]+)\s*=(.*)$/s.exec(setting) ?? [];
  if (path === undefined) throw new SparebudError([{ code: 'wrong-type', path: flag, message: `\`${setting}\` in \`${flag}\` sets nothing`, found: setting, help: `write it as path=value, such as ${flag} tree.vigour=strong` }]);
  return setAt(proposal, path, await typed(value!, path, knowledge));
};

/** Adds a flag for everything that these parts of a proposal can tell in one word; the words come from the knowledge. */
export const addProposalFlags = (command: Command, knowledge: Knowledge, parts: readonly string[] = ['date', 'where', 'tree', 'operation']): Command => {
  for (const { name, path, help, choices } of flagsOf(knowledge)) {
    const part = path.split('.')[0]!;
    if (!parts.includes(part)) continue;
    command.addOption(new Option(`--${name} <value>`, choices === undefined ? help : `${help}: ${choices.join(', ')}`).helpGroup(groups[part] ?? 'Day and place:'));
  }
  return command.option('--set <path=value>', 'anything else, such as tree.vigour=strong (repeatable)', (text: string, before: readonly string[] = []) => [...before, text])
    .addHelpText('after', '\nNumbers may have a unit of their own: 40%, 12mm, 1.5cm, 1/2in, 28F.');
};

/** A proposal with what the flags say put into it. */
export const withFlags = async (proposal: unknown, options: Readonly<Record<string, unknown>>, knowledge: Knowledge): Promise<unknown> => {
  let filled = proposal;
  for (const { name, path } of flagsOf(knowledge)) {
    const value = options[name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase())];
    if (typeof value === 'string') filled = setAt(filled, path, await typed(value, path, knowledge));
  }
  for (const each of (options['set'] ?? []) as readonly string[]) filled = await withSetting(filled, each, '--set', knowledge);
  return filled;
};

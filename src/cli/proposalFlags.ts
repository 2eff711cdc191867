import { type Command, Option } from 'commander';
import type { FactWord, Knowledge } from '../knowledge/knowledge.js';

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

const others: readonly Flag[] = [
  { name: 'date', path: 'date', help: 'the day, YYYY-MM-DD (today where it is not given)' },
  { name: 'place', path: 'where.place', help: 'id of a bundled station, see `sparebud places`' },
  { name: 'latitude', path: 'where.latitude', help: 'degrees, north is positive' },
  { name: 'longitude', path: 'where.longitude', help: 'degrees, east is positive' },
  { name: 'elevation-m', path: 'where.elevationM', help: 'metres above the sea' },
  { name: 'last-frost', path: 'where.lastFrost', help: 'usual last frost, MM-DD' },
  { name: 'first-frost', path: 'where.firstFrost', help: 'usual first frost, MM-DD' },
  { name: 'region', path: 'where.region', help: 'country or state, such as BE or US-MN' },
  { name: 'rootstock', path: 'tree.rootstock', help: 'species whose roots it stands on' },
  { name: 'branch', path: 'operation.branch', help: 'id of the branch' },
];

const flagsOf = (knowledge: Knowledge): readonly Flag[] => {
  const flags = [...others, ...Object.values(knowledge.facts).map(factFlag).filter((flag) => flag !== undefined)];
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

/** A value as typed: numbers, true and false are what they look like, dates and words stay text; anything else is read as YAML, for which its parser is loaded. */
export const typed = async (text: string): Promise<unknown> => {
  if (dated.test(text) || word.test(text)) return text;
  if (counted.test(text)) return Number(text);
  const { parse } = await import('yaml');
  return parse(text) as unknown;
};

/** Adds a flag for everything that a proposal can tell in one word; the words come from the knowledge. */
export const addProposalFlags = (command: Command, knowledge: Knowledge): Command => {
  for (const { name, help, choices } of flagsOf(knowledge)) {
    const flag = new Option(`--${name} <value>`, choices === undefined ? help : `${help}: ${choices.join(', ')}`);
    command.addOption(flag);
  }
  return command.option('--set <path=value>', 'anything else, such as tree.vigour=strong (repeatable)', (text: string, before: readonly string[]) => [...before, text], [] as readonly string[]);
};

/** A proposal with what the flags say put into it. */
export const withFlags = async (proposal: unknown, options: Readonly<Record<string, unknown>>, knowledge: Knowledge): Promise<unknown> => {
  let filled = proposal;
  for (const { name, path } of flagsOf(knowledge)) {
    const value = options[name.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase())];
    if (typeof value === 'string') filled = setAt(filled, path, await typed(value));
  }
  for (const each of options['set'] as readonly string[]) {
    const [path, ...value] = each.split('=');
    filled = setAt(filled, path!, await typed(value.join('=')));
  }
  return filled;
};

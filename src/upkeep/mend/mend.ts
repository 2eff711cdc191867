import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { newFolds } from '../../engine/specialise.js';
import { flatten } from '../../knowledge/flatten.js';
import type { Rule, RuleExample } from '../../knowledge/knowledge.js';
import { readParts } from '../../knowledge/read/readKnowledge.js';
import { helpMark, unfinished } from '../house/unfinished.js';
import { draftExamples } from './draftExamples.js';
import { draftLines } from './draftLines.js';
import { mendRule } from './mendRule.js';
import { mendSpecies } from './mendSpecies.js';

/** What was mended: the files written, and how many drafts of examples wait in each rule. */
export interface Mended {
  readonly files: readonly string[];
  readonly drafts: Readonly<Record<string, number>>;
}

const withoutHelp = (text: string): string => text.split('\n').filter((line) => !line.trimStart().startsWith(helpMark)).join('\n');

/** A rule as far as it is written: good enough to draft examples for, or not yet. */
const draftable = (written: Readonly<Record<string, unknown>>): Omit<Rule, 'id'> | undefined => {
  const { examples } = written;
  if (!Array.isArray(written['when']) || (written['when'] as readonly unknown[]).some((condition) => typeof condition !== 'object')) return undefined;
  const own = Array.isArray(examples) ? examples.filter((example): example is RuleExample => typeof example === 'object' && example !== null) : [];
  return { unless: [], covers: [], reverses: [], ...written, examples: own } as unknown as Omit<Rule, 'id'>;
};

/**
 * Puts the files of a folder in the house's order and format, takes out what only repeats, and drafts the examples that rules lack, as comments.
 * Files that cannot be read as they should stay as they are, `vet` says why.
 */
export const mend = async (root: string): Promise<Mended> => {
  const { parts, issues, files } = readParts(root);
  const faulty = new Set(issues.filter(({ code }) => code !== 'missing' && code !== 'incomplete').map(({ file }) => file));
  const written: string[] = [];
  const drafts: Record<string, number> = {};
  const write = (file: string, before: string, after: string): void => {
    if (after === before) return;
    writeFileSync(join(root, file), after);
    written.push(file);
  };
  for (const file of files.keys()) {
    const text = readFileSync(join(root, file), 'utf8');
    const [, id] = /^species\/\w+\/(.*)\.ya?ml$/.exec(file) ?? [];
    if (id === undefined || faulty.has(file)) continue;
    const { traits, asParent } = parts.species.get(id)?.written ?? {};
    /* A scaffold in which no trait is told yet is begun too: its help is still needed. */
    const begun = unfinished(file, text).length > 0 || ((traits ?? undefined) === undefined && asParent === undefined);
    write(file, text, mendSpecies(id, begun ? text : withoutHelp(text), parts));
  }
  const folds = newFolds();
  const knowledge = flatten({ ...parts, rules: new Map() });
  for (const [id, rule] of parts.rules) {
    const file = files.has(`rules/${id}.yaml`) ? `rules/${id}.yaml` : `rules/${id}.yml`;
    const text = readFileSync(join(root, file), 'utf8');
    const begun = unfinished(file, text);
    const onlyExamples = begun.length > 0 && begun.every(({ at }) => at[0] === 'examples');
    if (begun.length > 0 ? !onlyExamples : faulty.has(file)) continue;
    const whole = draftable(rule);
    const wanted = whole === undefined ? [] : await draftExamples({ ...whole, id }, knowledge, folds);
    if (wanted.length > 0) drafts[file] = wanted.length;
    write(file, text, mendRule(withoutHelp(text)).trimEnd() + '\n' + draftLines(wanted));
  }
  return { files: written, drafts };
};

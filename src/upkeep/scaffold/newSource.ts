import { SparebudError } from '../../knowledge/error.js';
import { todo } from '../house/unfinished.js';
import { flowText } from '../mend/flowText.js';

const wanted: Readonly<Record<string, string>> = {
  title: `${todo} its title; in square brackets a description, where the title was not seen`,
  author: '',
  year: '',
  in: '',
  from: `${todo} read (you saw it there), memory (recalled) or practice`,
  extent: '',
  grade: `${todo} journal, standard, extension, agency, press, trade, law, practice or data`,
  studied: `${todo} the setting: container, nursery, landscape, forest, orchard, lab, garden, seed, law, practice or mixed`,
};

/**
 * The text of shared/sources.yaml with one more entry, in its place by the alphabet; what is not told is left to be written.
 *
 * @throws SparebudError where the id is there already
 */
export const newSource = (id: string, told: Readonly<Record<string, string>>, text: string): string => {
  if (!/^[a-z0-9]+(-[a-z0-9]+)*$/.test(id)) throw new SparebudError([{ code: 'bad-pattern', path: 'id', message: `\`${id}\` is no id of a source`, help: 'small letters, figures and hyphens: author and year, such as smith-1998' }]);
  const lines = text.trimEnd().split('\n');
  const idAt = (line: string): string | undefined => /^([a-z0-9][a-z0-9-]*):/.exec(line)?.[1];
  if (lines.some((line) => idAt(line) === id)) throw new SparebudError([{ code: 'duplicate', path: 'id', message: `the source \`${id}\` is there already`, help: 'cite it' }]);
  const entry = [`${id}:`, ...Object.entries(wanted).flatMap(([member, open]) => {
    const value = told[member] ?? open;
    return value === '' ? [] : [`  ${member}: ${flowText(member === 'year' ? Number(value) : value)}`];
  })];
  const after = lines.findIndex((line) => (idAt(line) ?? '') > id);
  const at = after < 0 ? lines.length : after;
  return `${[...lines.slice(0, at), ...entry, ...lines.slice(at)].join('\n')}\n`;
};

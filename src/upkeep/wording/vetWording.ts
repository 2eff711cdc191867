import type { Fault } from '../../knowledge/check.js';
import type { Knowledge } from '../../knowledge/knowledge.js';
import { didYouMean } from '../../knowledge/nearest.js';
import type { YamlFile } from '../../knowledge/read/readYaml.js';
import { paramsIn } from '../../advice/message.js';
import { englishWording } from './englishWording.js';
import { type WordingFile, wordingFiles } from './wordingFiles.js';

const fault = ({ file }: WordingFile, id: string | undefined, code: Fault['code'], message: string, help: string): Fault => ({ code, file: file.file, at: id === undefined ? [] : [id], path: id ?? '', message, help });

const braced = (names: readonly string[]): string => (names.length === 0 ? 'no parameter' : names.map((name) => `{${name}}`).join(' '));

/** What one file says that English does not, or with other parameters. */
const entryFaults = (each: WordingFile, english: Readonly<Record<string, string>>, said: Map<string, string>): readonly Fault[] =>
  Object.entries(each.texts).flatMap(([id, text]): readonly Fault[] => {
    if (!Object.hasOwn(english, id)) return [fault(each, id, 'unknown-name', `no text has the id \`${id}\``, didYouMean(id, Object.keys(english)) ?? 'take it out')];
    const elsewhere = said.get(id);
    said.set(id, each.file.file);
    if (elsewhere !== undefined) return [fault(each, id, 'duplicate', `\`${id}\` stands in ${elsewhere} too`, 'keep one of them')];
    const [has, wants] = [text, english[id]!].map((one) => braced([...new Set(paramsIn(one))].sort()));
    return has === wants ? [] : [fault(each, id, 'unknown-parameter', `\`${id}\` has ${has!}, the English text ${wants!}`, 'use each parameter of the English text, and no other')];
  });

/** What a language lacks: each fault stands where the text belongs, after the last one before it that a file has. */
const gaps = (language: string, of: readonly WordingFile[], english: Readonly<Record<string, string>>): readonly Fault[] => {
  const faults: Fault[] = [];
  let before: readonly [WordingFile, string?] = [of[0]!];
  for (const id of Object.keys(english)) {
    const holds = of.find(({ texts }) => Object.hasOwn(texts, id));
    if (holds === undefined) faults.push(fault(...before, 'missing', `\`${id}\` is missing in \`${language}\``, `say it in this language: ${english[id]!}`));
    else before = [holds, id];
  }
  return faults;
};

/** Whether each language says all that English says, nothing else, and with the same parameters. */
export const vetWording = (knowledge: Knowledge, files: ReadonlyMap<string, YamlFile>): readonly Fault[] => {
  const english = englishWording(knowledge);
  return [...wordingFiles(files)].flatMap(([language, of]) => {
    const said = new Map<string, string>();
    return [...of.flatMap((each) => entryFaults(each, english, said)), ...gaps(language, of, english)];
  });
};

import type { YamlFile } from '../../knowledge/read/readYaml.js';

/** A file of a language: `shared/wording/de.yaml`, or a part of it such as `shared/wording/de.rules.yaml`. */
export interface WordingFile {
  readonly file: YamlFile;
  readonly texts: Readonly<Record<string, string>>;
}

/** The files of each language but English, whose texts the knowledge holds. */
export const wordingFiles = (files: ReadonlyMap<string, YamlFile>): ReadonlyMap<string, readonly WordingFile[]> => {
  const languages = new Map<string, readonly WordingFile[]>();
  for (const [path, file] of files) {
    const language = /^shared\/wording\/([^./]+)(?:\.[^./]+)?\.ya?ml$/.exec(path)?.[1];
    if (language !== undefined && language !== 'en') languages.set(language, [...(languages.get(language) ?? []), { file, texts: (file.data ?? {}) as WordingFile['texts'] }]);
  }
  return languages;
};

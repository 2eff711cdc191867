import type { Knowledge } from '../../knowledge/knowledge.js';
import type { YamlFile } from '../../knowledge/read/readYaml.js';
import { textOf } from '../fold/publishedFiles.js';
import { englishWording } from './englishWording.js';
import { wordingFiles } from './wordingFiles.js';

const moduleOf = (texts: object): string => `/* Built from shared/wording/ and rules/ by \`npm run build\`. */\nexport const wording: Readonly<Record<string, string>> = /* @__PURE__ */ JSON.parse(${textOf(texts)});\n`;

/** The modules `sparebud/wording/<language>`, by language: flat records of every text. */
export const wordingModules = (knowledge: Knowledge, files: ReadonlyMap<string, YamlFile>): ReadonlyMap<string, string> =>
  new Map([['en', moduleOf(englishWording(knowledge))], ...[...wordingFiles(files)].map(([language, of]): [string, string] => [language, moduleOf(Object.assign({}, ...of.map(({ texts }) => texts)) as object)])]);

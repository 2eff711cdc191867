import type { FoldedGroup } from '../../knowledge/published/folded.js';
import type { FoldedKnowledge } from './foldKnowledge.js';

const header = '/* Built from species/, rules/ and shared/ by `npm run build`. */\n';

/** JSON without accents and the like: a module of plain ASCII is read in half the time, and one letter beyond it would double the memory of the whole text. */
const asciiJson = (data: unknown): string => JSON.stringify(data).replace(/[^\x20-\x7e]/g, (letter) => `\\u${letter.charCodeAt(0).toString(16).padStart(4, '0')}`);

/** Data as a text that is quick to parse; in single quotes, since what it holds is full of double ones. */
export const textOf = (data: unknown): string => `'${asciiJson(data).replace(/\\/g, '\\\\').replace(/'/g, "\\'")}'`;

const textModule = (data: unknown): string => `${header}export const text: string = ${textOf(data)};\n`;

const groupText = ({ traits, ...names }: FoldedGroup): string => `names: ${textOf(names)}, traits: ${textOf(traits)}`;

const constantName = (id: string): string => id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

/** The modules of src/knowledge/published/ that hold the knowledge, by their names. */
export const publishedFiles = ({ common, groups, notes }: FoldedKnowledge): ReadonlyMap<string, string> => {
  const ids = Object.keys(groups).sort();
  return new Map([
    ['common.data.ts', textModule(common)],
    ['notes.data.ts', textModule(notes)],
    ...ids.map((id): [string, string] => [`groups/${id}.data.ts`, `${header}import type { SpeciesGroup } from '../folded.js';\n\nexport const group: SpeciesGroup = { id: '${id}', ${groupText(groups[id]!)} };\n`]),
    ['groups.data.ts', `${header}${ids.map((id) => `import { group as ${constantName(id)} } from './groups/${id}.data.js';\n`).join('')}\nexport const groups = [${ids.map(constantName).join(', ')}];\n`],
  ]);
};

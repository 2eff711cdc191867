import type { FoldedKnowledge } from './foldKnowledge.js';

const header = '/* Built from species/, rules/ and shared/ by `npm run build`. */\n';

/** Data as a text that is quick to parse; in single quotes, since what it holds is full of double ones. */
export const textOf = (data: unknown): string => `'${JSON.stringify(data).replace(/\\/g, '\\\\').replace(/'/g, "\\'")}'`;

const textModule = (data: unknown): string => `${header}export const text: string = ${textOf(data)};\n`;

const constantName = (id: string): string => id.replace(/-(.)/g, (_, letter: string) => letter.toUpperCase());

/** The modules of src/knowledge/published/ that hold the knowledge, by their names. */
export const publishedFiles = ({ common, groups, notes }: FoldedKnowledge): ReadonlyMap<string, string> => {
  const ids = Object.keys(groups).sort();
  return new Map([
    ['common.data.ts', textModule(common)],
    ['notes.data.ts', textModule(notes)],
    ...ids.map((id): [string, string] => [`groups/${id}.data.ts`, `${header}import type { SpeciesGroup } from '../folded.js';\n\nexport const group: SpeciesGroup = { id: '${id}', text: ${textOf(groups[id])} };\n`]),
    ['groups.data.ts', `${header}${ids.map((id) => `import { group as ${constantName(id)} } from './groups/${id}.data.js';\n`).join('')}\nexport const groups = [${ids.map(constantName).join(', ')}];\n`],
  ]);
};

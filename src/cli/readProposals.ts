import { existsSync, readFileSync, statSync } from 'node:fs';
import { SparebudError } from '../knowledge/error.js';

/** Whether a word on the command line names a file, or standard input. */
export const isFile = (word: string): boolean => word === '-' || /\.(ya?ml|json)$/i.test(word) || existsSync(word);

const unread = (file: string, message: string, help: string): SparebudError => new SparebudError([{ code: 'missing', path: file, message, help }]);

/** @throws SparebudError where there is no such file to read */
export const mustBeFile = (file: string): void => {
  if (file !== '-' && statSync(file, { throwIfNoEntry: false })?.isDirectory() !== false) throw unread(file, `no file \`${file}\` to read`, 'name a YAML or JSON file, or - for standard input');
};

/** The proposals of a YAML or JSON file, or of standard input for `-`: one, a list, or several documents. */
export const readProposals = async (file: string): Promise<readonly unknown[]> => {
  mustBeFile(file);
  const text = readFileSync(file === '-' ? 0 : file, 'utf8');
  const { parseAllDocuments } = await import('yaml');
  const documents = parseAllDocuments(text, { prettyErrors: false });
  const read: unknown[] = [];
  for (const document of Array.isArray(documents) ? documents : []) {
    const error = document.errors[0];
    if (error !== undefined) {
      const before = text.slice(0, error.pos[0]).split('\n');
      throw new SparebudError([{ code: 'bad-yaml', path: file, message: error.message, help: 'check indentation, colons, commas and quotes on this line', file, line: before.length, col: before.at(-1)!.length + 1 }]);
    }
    const data: unknown = document.toJS({ maxAliasCount: 50 });
    if (Array.isArray(data)) read.push(...(data as unknown[]));
    else read.push(data);
  }
  if (read.length === 0) throw unread(file, `nothing stands in \`${file}\``, 'write what you mean to ask into it, as YAML or JSON');
  return read;
};

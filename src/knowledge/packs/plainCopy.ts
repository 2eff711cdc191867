import { type IssueCode, SparebudError } from '../error.js';
import { shownPath } from '../schemaIssues.js';

/** What a pack may hold: far more than people write, and little enough to be read at once. */
export const mostOf = { values: 200_000, levels: 24, letters: 4_000 } as const;

/** Names that mean something to the language itself. */
const reserved = new Set(['__proto__', 'constructor', 'prototype']);

type Path = readonly (string | number)[];

const refuse = (code: IssueCode, path: Path, message: string, help: string): never => {
  throw new SparebudError([{ code, path: shownPath(path), message: path.length === 0 ? message : `${message} in \`${shownPath(path.slice(0, 6))}\``, help }]);
};

/**
 * Data from outside as plain data of our own, whatever it is: nothing of it is kept, and nothing that it does later changes what was read.
 *
 * @throws SparebudError where it is no plain data, nests too deep, or is too large; circles nest too deep
 */
export const plainCopy = (given: unknown): unknown => {
  let values = 0;
  const counted = (more: number): void => {
    values += more;
    if (values > mostOf.values) refuse('too-large', [], `more than ${mostOf.values} values`, 'split it into several');
  };
  const textOf = (text: string, path: Path): string => (text.length > mostOf.letters ? refuse('too-large', path, `a text of ${text.length} letters`, `at most ${mostOf.letters}`) : text);
  const copy = (value: unknown, path: Path): unknown => {
    counted(1);
    if (path.length > mostOf.levels) refuse('too-large', path, `nested deeper than ${mostOf.levels} levels`, 'write it flatter');
    if (typeof value === 'string') return textOf(value, path);
    if (value === null || typeof value === 'boolean' || (typeof value === 'number' && Number.isFinite(value))) return value;
    if (Array.isArray(value)) {
      counted(value.length);
      return Array.from({ length: value.length }, (_, i) => copy((value as readonly unknown[])[i], [...path, i]));
    }
    if (typeof value !== 'object') return refuse('wrong-type', path, `a ${typeof value} is no data`, 'give what JSON can say');
    const plain: Record<string, unknown> = {};
    for (const name of Object.keys(value)) {
      if (reserved.has(name)) refuse('not-allowed', path, `\`${name}\` is no name`, 'call it otherwise');
      const member = (value as Readonly<Record<string, unknown>>)[name];
      if (member !== undefined) plain[textOf(name, path)] = copy(member, [...path, name]);
    }
    return plain;
  };
  try {
    return copy(given, []);
  } catch (cause) {
    if (cause instanceof SparebudError) throw cause;
    throw new SparebudError([{ code: 'wrong-type', path: '', message: 'it cannot be read', help: 'give plain data, as JSON.parse does' }]);
  }
};

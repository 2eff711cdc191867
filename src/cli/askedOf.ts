import { SparebudError, type Issue } from '../knowledge/error.js';
import type { Knowledge } from '../knowledge/knowledge.js';
import { setAt, withFlags } from './proposalFlags.js';

/** What the words of a command line say that its flags do not. */
export interface Words {
  readonly op?: string | undefined;
  readonly species?: string | undefined;
}

const isOperation = (word: string, { operations }: Knowledge): boolean => Object.hasOwn(operations, word) || Object.values(operations).some(({ aliases }) => Object.hasOwn(aliases, word));

/** Words in the order that was meant: the species may come first. */
const inOrder = ({ op, species }: Words, knowledge: Knowledge): Words =>
  op !== undefined && species !== undefined && !isOperation(op, knowledge) && isOperation(species, knowledge) ? { op: species, species: op } : { op, species };

const untold = (asked: unknown): readonly Issue[] => {
  const { tree, operation } = asked as { readonly tree?: { readonly species?: unknown }; readonly operation?: unknown };
  return [
    ...(operation === undefined ? [{ code: 'missing' as const, path: 'operation', message: 'no operation is told', help: 'name one, as in `sparebud ask repot "trident maple"`; `sparebud operations` lists them' }] : []),
    ...(tree?.species === undefined ? [{ code: 'missing' as const, path: 'tree.species', message: 'no species is told', help: 'name it, as in `sparebud ask repot "trident maple"`; `sparebud species` lists them' }] : []),
  ];
};

/**
 * The proposal that words and flags tell, put into one from a file where there is one.
 *
 * @throws SparebudError where no file tells a species or an operation, nor does the command line
 */
export const askedOf = async (fromFile: unknown, words: Words, flags: Readonly<Record<string, unknown>>, knowledge: Knowledge): Promise<unknown> => {
  const { op, species } = inOrder(words, knowledge);
  let asked: unknown = fromFile ?? {};
  if (op !== undefined) asked = setAt(asked, 'operation.op', op);
  if (species !== undefined) asked = setAt(asked, 'tree.species', species);
  asked = await withFlags(asked, flags, knowledge);
  const issues = fromFile === undefined ? untold(asked) : [];
  if (issues.length > 0) throw new SparebudError(issues);
  return asked;
};

import type { Chore, FactWord, Knowledge, OperationWord, Value } from '../knowledge.js';
import type { YamlFile } from './readYaml.js';

type Written = Readonly<Record<string, Readonly<Record<string, unknown>>>>;

const withIds = <Word>(file: YamlFile | undefined, make: (id: string, written: Readonly<Record<string, unknown>>) => Word): Readonly<Record<string, Word>> => {
  const data = file?.data;
  if (typeof data !== 'object' || data === null) return {};
  return Object.fromEntries(Object.entries(data as Written).filter(([, written]) => typeof written === 'object' && written !== null).map(([id, written]) => [id, make(id, written)]));
};

/** The facts of shared/facts.yaml, each with its id and its assumption by operation. */
export const readFacts = (file: YamlFile | undefined): Readonly<Record<string, FactWord>> =>
  withIds(file, (id, written) => {
    const { assume, ...rest } = written;
    const byOperation = typeof assume === 'object' && assume !== null ? (assume as Readonly<Record<string, Value>>) : { default: assume as Value };
    return { id, ...rest, ...(assume === undefined ? {} : { assume: byOperation }) } as FactWord;
  });

/** The operations of shared/operations.yaml, each with its id and its defaults filled in. */
export const readOperations = (file: YamlFile | undefined): Readonly<Record<string, OperationWord>> =>
  withIds(file, (id, written) => ({ id, aliases: {}, leavesWound: false, sheds: false, instead: [], leaves: {}, ...written }) as unknown as OperationWord);

/** The chores of shared/chores.yaml, each with its id and its defaults filled in, how far ahead one counts as soon, and for how long one that was done is not due again. */
export const readChores = (file: YamlFile | undefined): Pick<Knowledge, 'chores' | 'soonDays' | 'againDays'> => {
  const data = file?.data as { readonly soon?: number; readonly again?: number; readonly chores?: Written } | null | undefined;
  const chores = Object.entries(data?.chores ?? {}).map(([id, written]): [string, Chore] => {
    const ways = (written['ways'] ?? []) as Chore['ways'];
    return [id, { id, told: [], doneBy: [], when: [], operations: ways.slice(0, 1).map(({ op }) => op), ...written } as unknown as Chore];
  });
  return { chores: Object.fromEntries(chores), soonDays: data?.soon ?? 30, againDays: data?.again ?? 200 };
};

/** Entries of any other shared mapping, each with its id. */
export const readEntries = <Word>(file: YamlFile | undefined): Readonly<Record<string, Word>> => withIds(file, (id, written) => ({ id, ...written }) as Word);

import type { FactWord, OperationWord, Value } from '../knowledge.js';
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

/** Entries of any other shared mapping, each with its id. */
export const readEntries = <Word>(file: YamlFile | undefined): Readonly<Record<string, Word>> => withIds(file, (id, written) => ({ id, ...written }) as Word);

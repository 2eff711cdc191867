import type { Contender } from './contender.js';
import { engineForAll } from './engineForAll.js';
import { engineOnePass } from './engineOnePass.js';
import { enginePerOperation } from './enginePerOperation.js';
import { jsonLogic } from './jsonLogic.js';
import { residualCells } from './residualCells.js';
import { tracedClosures } from './tracedClosures.js';
import { zen } from './zen.js';

/** A contender by name, and of every how many questions of the batch it is asked one: the slow ones not all. */
export interface Entry {
  readonly id: 'cells' | 'closures' | 'jsonLogic' | 'operation' | 'onePass' | 'all' | 'zen';
  readonly name: string;
  readonly contender: Contender;
  readonly oneIn: number;
  /** It cannot tell what is not known, so its answers are counted where they differ, not held to ours. */
  readonly unsound?: true;
}

const zenEntry = async (): Promise<Entry> => {
  const { ZenEngine } = await import('@gorules/zen-engine');
  return { id: 'zen', name: 'zen-engine, a decision table', contender: zen(new ZenEngine()), oneIn: 4 };
};

/** Those that stand side by side, ours first, and why one of them is not there. */
export const contenders = async (): Promise<{ readonly entries: readonly Entry[]; readonly absent: readonly string[] }> => {
  const entries: Entry[] = [
    { id: 'cells', name: 'sparebud: residual rules and cells', contender: residualCells, oneIn: 1 },
    { id: 'closures', name: 'closures written by hand, traced', contender: tracedClosures, oneIn: 1 },
    { id: 'jsonLogic', name: 'json-logic-engine, compiled', contender: jsonLogic, oneIn: 1 },
    { id: 'operation', name: 'json-rules-engine, one engine an operation', contender: enginePerOperation, oneIn: 5 },
    { id: 'onePass', name: 'the same, unknown taken for false', contender: engineOnePass, oneIn: 5, unsound: true },
    { id: 'all', name: 'json-rules-engine, one engine for all', contender: engineForAll, oneIn: 50 },
  ];
  try {
    return { entries: [...entries, await zenEntry()], absent: [] };
  } catch (cause) {
    return { entries, absent: [`zen-engine is not here: ${(cause as Error).message.split('\n')[0]}`] };
  }
};
